package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cloth command: both cards, or nothing and a reason. */
class ClothCommandTest {
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    private int run(String... args) {
        return Commands.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);
    }

    @Tag("slow")
    @Test
    void bothCardsAreWrittenWithAndWithoutAMake() {
        String out = folder.resolve("cards").toString();
        assertThat(run("cloth", "--out", out)).as(err.toString()).isZero();
        assertThat(Path.of(out, "cloth-test-card.pdf")).isNotEmptyFile();
        long usual = Path.of(out, "shop-card.pdf").toFile().length();
        assertThat(run("cloth", "examples/evening-practice.yaml", "--out", out, "--paper", "Letter"))
                .as(err.toString())
                .isZero();
        assertThat(Path.of(out, "shop-card.pdf").toFile().length()).isNotEqualTo(usual);
    }

    @Test
    void anotherPaperOrFileIsRefusedAndNothingWritten() {
        String out = folder.resolve("none").toString();
        assertThat(run("cloth", "--out", out, "--paper", "A0")).isEqualTo(Exit.INPUT);
        assertThat(err.toString()).contains("A4 or Letter");
        assertThat(run("cloth", "no-such.yaml", "--out", out)).isEqualTo(Exit.INPUT);
        assertThat(Path.of(out)).doesNotExist();
    }

    @Test
    void jsonIsTheNumbersOfTheShopCard() throws IOException {
        StringWriter printed = new StringWriter();
        Path out = folder.resolve("cards");
        int code = Commands.run(
                new PrintWriter(printed), new PrintWriter(err), "cloth", "--json", "--out", out.toString());
        assertThat(code).isZero();
        assertThat(printed).hasToString(Files.readString(out.resolve("cloth.json")));
    }
}
