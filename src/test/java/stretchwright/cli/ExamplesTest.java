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
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** The examples through the whole program, nothing replaced: exit code, files and the report's schema. */
@Tag("slow")
class ExamplesTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Set<String> STOPPED = Set.of("too-little-stretch.yaml");

    @TempDir
    Path folder;

    @Test
    void everyExampleEndsAsItsRemarksSay() throws IOException {
        List<String> examples;
        try (Stream<Path> all = Files.list(Path.of("examples"))) {
            examples = all.map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
        assertThat(examples).hasSizeGreaterThanOrEqualTo(11).containsAll(STOPPED);
        for (String example : examples) {
            Path out = folder.resolve(example);
            StringWriter err = new StringWriter();
            int code = Commands.run(
                    new PrintWriter(new StringWriter()),
                    new PrintWriter(err),
                    "make",
                    "examples/" + example,
                    "--out",
                    out.toString());
            assertThat(code).as(example + "\n" + err).isEqualTo(STOPPED.contains(example) ? 3 : 0);
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
