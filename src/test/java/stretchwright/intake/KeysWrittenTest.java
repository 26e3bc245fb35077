package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What is written from the table of keys is as the table says. With -Dkeys.write=true it is written anew. */
class KeysWrittenTest {
    private static final Path SCHEMA = Path.of("src/main/resources/stretchwright/make.schema.json");
    private static final Path FORMATS = Path.of("docs/formats.md");

    @Test
    void theSchemaIsThatOfTheTable() throws IOException {
        same(SCHEMA, json() + "\n");
    }

    @Test
    void theTablesOfTheFormatsAreThoseOfTheTable() throws IOException {
        same(FORMATS, new KeysDocument(Table.keys()).in(Files.readString(FORMATS)));
    }

    private static void same(Path file, String wanted) throws IOException {
        if (Boolean.getBoolean("keys.write")) {
            Files.writeString(file, wanted);
        }
        assertThat(Files.readString(file))
                .as("%s: run this test with -Dkeys.write=true", file)
                .isEqualTo(wanted);
    }

    private static String json() {
        DefaultIndenter lines = new DefaultIndenter(" ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .defaultPrettyPrinter(printer)
                .build()
                .writeValueAsString(Schema.of(Table.keys()));
    }
}
