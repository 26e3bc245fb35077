package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.intake.SampleText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The club command through the whole program; all bodies invented. */
class ClubCommandTest {
    private static final String OPEN = SampleText.with("lay: any", "lay: open");

    @TempDir
    Path folder;

    private Path a;
    private Path b;
    private Path out;

    @BeforeEach
    void files() throws IOException {
        a = Files.writeString(folder.resolve("a.yaml"), OPEN);
        b = Files.writeString(folder.resolve("b.yaml"), OPEN.replace("Rowan", "Mika & <co>"));
        out = folder.resolve("out");
    }

    private Ran club(Object... more) {
        List<Object> all = new ArrayList<>(List.of("club"));
        all.addAll(List.of(more));
        all.addAll(List.of("--out", out));
        return Ran.of(all.toArray());
    }

    @Tag("slow")
    @Test
    void aClubIsWrittenToldAndReplaced() throws IOException {
        Ran ran = club(a, b, a, "--table", "140 in", "--rounds", "1,1");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("Mika & <co>: 3 pieces");
        assertThat(ran.out())
                .contains("Club of 3 garments on 1 table\n", "  table 1        ", "fabric to buy", "one by one")
                .contains("Rowan, Mika & <co>, Rowan 2", out.toString());
        assertThat(out.toFile().list()).containsExactlyInAnyOrder("club.json", "club.pdf", "table-1.svg");
        JsonNode json = JsonMapper.builder().build().readTree(Files.readAllBytes(out.resolve("club.json")));
        assertThat(json.at("/club/tableLength").asDouble()).isEqualTo(3556);
        assertThat(json.at("/club/garments/1/file").asString()).isEqualTo(b.toString());
        assertThat(Files.readString(out.resolve("table-1.svg"))).contains("Mika &amp; &lt;co&gt;: leg L");
        Ran again = club(b, "--seconds", "0", "--json", "--quiet");
        assertThat(again.code()).as(again.err()).isZero();
        assertThat(again.err()).isEmpty();
        assertThat(again.out()).isEqualTo(Files.readString(out.resolve("club.json")));
        assertThat(JsonMapper.builder()
                        .build()
                        .readTree(again.out())
                        .at("/club/rounds/0")
                        .asInt(-1))
                .isZero();
    }

    /** The clock ends the search: far below the time that the rounds would take. */
    @Tag("slow")
    @Test
    void theClockEndsTheSearch() {
        long start = System.nanoTime();
        Ran ran = club(a, a, "--seconds", "0.3");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat((System.nanoTime() - start) / 1e9).isLessThan(60);
    }

    @Test
    void aGarmentThatCannotWorkIsToldAndLaidAllTheSame() throws IOException {
        Path firm = Files.writeString(
                folder.resolve("firm.yaml"), OPEN.replace("stretch across: 60 %", "stretch across: 8 %"));
        Ran ran = club(firm, "--seconds", "0", "--quiet");
        assertThat(ran.code()).isEqualTo(Exit.CANNOT_WORK);
        assertThat(ran.err()).contains("Rowan: stop: ");
        assertThat(out.resolve("club.pdf")).exists();
    }

    @Test
    void argumentsThatCannotBeAreFindings() {
        assertThat(club().code()).isEqualTo(Exit.INPUT);
        for (String table : List.of("abc", "3", "-3 m", "0 m", "1e9 m", "NaN m")) {
            Ran ran = club(a, "--table=" + table);
            assertThat(ran.code()).as(table).isEqualTo(Exit.INPUT);
            assertThat(ran.err().lines()).as(table).singleElement().asString().contains("--table: \"" + table + "\"");
        }
        for (String seconds : List.of("NaN", "-1", "1e9", "Infinity")) {
            assertThat(club(a, "--seconds=" + seconds).err())
                    .contains("--seconds: ")
                    .contains("cannot be");
        }
        assertThat(club(a, "--rounds", "-1,2").code()).isEqualTo(Exit.INPUT);
        assertThat(club(a, "--rounds", "5").err()).contains("two counts of rounds");
        assertThat(club(a, "--seed", "x").code()).isEqualTo(Exit.INPUT);
        assertThat(out).doesNotExist();
    }

    @Test
    void moreFilesThanOneLayTakesAreOneFinding() {
        Object[] many = java.util.Collections.nCopies(61, a).toArray();
        Ran ran = club(many);
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err().lines()).singleElement().asString().contains("61 files are more than one lay takes");
    }

    @Test
    void everyFileThatIsWrongIsNamedOnce() throws IOException {
        Path wide = Files.writeString(folder.resolve("c.yaml"), OPEN.replace("usable width: 147", "usable width: 150"));
        Ran ran = club(a, wide, wide, "--seconds", "0", "--quiet");
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err().lines())
                .singleElement()
                .asString()
                .isEqualTo(wide + ": fabric.usable width: is 150 cm, but 147 cm in " + a
                        + ". One roll is one cloth. Give both the same fabric, or lay them in two runs.");
        Path broken = Files.writeString(folder.resolve("d.yaml"), OPEN.replace("unit: cm", "unit: parsec"));
        Ran two = club(broken, "nowhere.yaml", broken, "--table", "abc");
        assertThat(two.err().lines()).hasSize(3);
        Ran small = club(a, "--table", "60 cm", "--seconds", "0", "--quiet");
        assertThat(small.code()).isEqualTo(Exit.INPUT);
        assertThat(small.err()).contains("club: --table: Rowan alone is longer than the table of 60.0 cm.");
        assertThat(out).doesNotExist();
    }
}
