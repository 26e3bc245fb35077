package stretchwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Progress;
import stretchwright.make.Make;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whole makes through the real rooms: their reports keep the schema and carry what the fit check found. */
class ExampleReportsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static JsonNode report(String example) throws IOException {
        byte[] text = Files.readAllBytes(Path.of("examples", example + ".yaml"));
        return JSON.readTree(
                Make.run(Make.read(example, text), Progress.silent()).report().bytes());
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"evening-practice", "two-different-legs", "too-little-stretch", "shaped-seam-gusset"})
    void theReportKeepsItsSchema(String example) throws IOException {
        JsonNode report = report(example);
        try (InputStream in = ExampleReportsTest.class.getResourceAsStream("/stretchwright/report.schema.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(JSON.readTree(in))
                            .validate(report))
                    .isEmpty();
        }
        assertThat(report.at("/fit/seams").size())
                .isEqualTo(report.at("/pattern/seams").size());
        assertThat(report.at("/fit/slips").size()).isEqualTo(24);
        // one for each pose and region whose skin is told across: eight published, three derived for lunge and high leg
        assertThat(report.at("/fit/covers").size()).isEqualTo(11);
        assertThat(report.at("/fit/lengths").size()).isPositive();
        assertThat(report.at("/pattern/holds").size()).isPositive();
    }
}
