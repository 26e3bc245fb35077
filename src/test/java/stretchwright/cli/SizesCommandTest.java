package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.intake.SampleText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The sizes and survey commands through the whole program; all bodies invented. */
class SizesCommandTest {
    private static final String TEAM = """
            name,figure,unit,stature,waist girth,hip girth
            S,woman,cm,160,66,90
            M,woman,cm,166,72,97
            L,woman,cm,171,80,105
            """;

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Ran sizes(String table) throws IOException {
        return Ran.of(
                "sizes",
                file("m.yaml", SampleText.WHOLE),
                "--bodies",
                file("t.csv", table),
                "--out",
                folder.resolve("out"));
    }

    private JsonNode nest() throws IOException {
        return JsonMapper.builder()
                .build()
                .readTree(Files.readAllBytes(folder.resolve("out/nest.json")))
                .get("nest");
    }

    @Test
    void aTeamGivesOneNest() throws IOException {
        Ran ran = sizes(TEAM);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(0);
        assertThat(folder.resolve("out").toFile().list())
                .containsExactlyInAnyOrder(
                        "nest.json", "nest.svg", "nest-A4.pdf", "nest.dxf", "sizes.csv", "grade.csv");
        JsonNode nest = nest();
        assertThat(nest.get("sizes")).extracting(s -> s.get("name").asString()).containsExactly("S", "M", "L");
        for (JsonNode piece : nest.get("pieces")) {
            for (JsonNode run : piece.get("runs")) {
                assertThat(run.get("lines")).hasSize(3);
                run.get("lines").forEach(l -> assertThat(l).hasSameSizeAs(run.get("shares")));
            }
            assertThat(piece.get("corners"))
                    .allSatisfy(c -> assertThat(c.get("moves")).hasSize(2));
        }
        List<String> table = Files.readAllLines(folder.resolve("out/sizes.csv"));
        assertThat(table).hasSize(4);
        assertThat(table)
                .allSatisfy(
                        l -> assertThat(l.split(",")).hasSameSizeAs(table.get(0).split(",")));
        String svg = Files.readString(folder.resolve("out/nest.svg"));
        assertThat(svg).contains("class=\"cut size-3\"").contains(">L</text>");
        assertThat(sizes(TEAM).code()).as("its own folder is replaced").isEqualTo(0);
    }

    @Test
    void brokenRowsAreNamedAndGoodOnesDone() throws IOException {
        Ran ran = sizes(TEAM + "XL,woman,cm,176,90,twelve\nQ,dragon,cm,176,90,110\nS,woman,cm,159,65,89\n");
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).contains("row 5, column hip girth").contains("row 6, column figure");
        assertThat(nest().get("sizes"))
                .extracting(s -> s.get("name").asString())
                .containsExactly("S", "M", "L", "S (2)");
    }

    /** As in a make file. */
    @Test
    void aSizeHasANameThatCanBeRead() throws IOException {
        Ran ran = sizes(TEAM + "L".repeat(121) + ",woman,cm,176,90,110\n");
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).contains("row 5, column name").contains("Use up to 120 letters");
        assertThat(nest().get("sizes")).hasSize(3);
    }

    /** A wearer whose foot is larger than the make's boot: a finding by row, and the others are done. */
    @Test
    void aBodyThatCannotBeDraftedIsAFindingByRow() throws IOException {
        Ran ran = sizes("name,figure,unit,stature,heel girth\na,woman,cm,165,\nb,man,cm,205,42\n");
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).contains("row 3");
        assertThat(nest().get("sizes")).hasSize(1);
    }

    @Tag("slow")
    @Test
    void moreSizesThanLinesCanBeToldApartAreRefused() throws IOException {
        StringBuilder many = new StringBuilder("figure,unit,stature\n");
        for (int i = 0; i < 10_000; i++) {
            many.append("woman,cm,").append(150 + i % 40).append('\n');
        }
        Ran ran = sizes(many.toString());
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).contains("holds 10000 bodies; more than 35 sizes");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void badTablesAndFilesAreFindings() throws IOException {
        assertThat(sizes("").err()).contains("holds no row under a header");
        assertThat(sizes("figure,unit\nwoman,cm\n").err()).contains("no column holds a measure");
        assertThat(Ran.of("sizes", "nowhere.yaml", "--bodies", "nor.csv", "--out", folder.resolve("o"))
                        .err())
                .contains("nowhere.yaml")
                .contains("nor.csv");
    }

    @Tag("slow")
    @Test
    void aSurveyIsWrittenAndReplaced() throws IOException {
        for (int i = 0; i < 2; i++) {
            Ran ran = Ran.of("survey", "--bodies", file("t.csv", TEAM), "--out", folder.resolve("s"), "--quiet");
            assertThat(ran.code()).as(ran.err()).isEqualTo(0);
        }
        assertThat(folder.resolve("s").toFile().list())
                .containsExactlyInAnyOrder("survey.json", "survey.md", "worst.svg");
        Ran ran =
                Ran.of("survey", "--bodies", file("t.csv", TEAM), "--style", "moon.yaml", "--out", folder.resolve("s"));
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).contains("moon.yaml: there is no such file");
    }
}
