package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** The examples through the whole program, nothing replaced: exit code, files and the report's schema. */
@Tag("slow")
class ExamplesTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Map<String, Integer> CODES = Map.of(
            "ankle-length.yaml", 0,
            "colour-panel.yaml", 0,
            "evening-practice.yaml", 0,
            "hockey-boots.yaml", 0,
            "roller-child.yaml", 0,
            "shaped-seam-gusset.yaml", 0,
            "too-little-stretch.yaml", 3,
            "two-different-legs.yaml", 0);

    @TempDir
    Path folder;

    @Test
    void everyExampleEndsAsItsRemarksSay() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("examples"))) {
            assertThat(all.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".yaml")))
                    .containsExactlyInAnyOrderElementsOf(CODES.keySet());
        }
        for (Map.Entry<String, Integer> example : CODES.entrySet()) {
            Path out = folder.resolve(example.getKey());
            StringWriter err = new StringWriter();
            int code = Commands.run(
                    new PrintWriter(new StringWriter()),
                    new PrintWriter(err),
                    "make",
                    "examples/" + example.getKey(),
                    "--out",
                    out.toString());
            assertThat(code).as(example.getKey() + "\n" + err).isEqualTo(example.getValue());
            assertKeepsItsContract(out.resolve("report.json"));
        }
    }

    private static void assertKeepsItsContract(Path report) throws IOException {
        try (InputStream schema = ExamplesTest.class.getResourceAsStream("/stretchwright/report.schema.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(JSON.readTree(schema))
                            .validate(JSON.readTree(Files.readAllBytes(report))))
                    .as(report.toString())
                    .isEmpty();
        }
    }
}
