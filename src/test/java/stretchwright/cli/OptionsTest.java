package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.intake.SampleText;

/** What options take, and that a finding about one stands under its command, not under a file. */
class OptionsTest {
    @TempDir
    Path folder;

    private Path good;
    private Path out;

    @BeforeEach
    void files() throws IOException {
        good = Files.writeString(folder.resolve("good.yaml"), SampleText.WHOLE);
        out = folder.resolve("out");
    }

    private Ran run(Object... args) {
        return Ran.with(CommandsTest.SAMPLE, args);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lay, plan", " lay ,plan ", "lay,,plan", "lay,plan,"})
    void blanksBetweenNamesOfFilesDoNoHarm(String names) {
        Ran ran = run("make", good, "--files", names, "--out", out);
        assertThat(ran.err()).doesNotContain("--files");
        assertThat(ran.code()).isZero();
        assertThat(out.toFile().list()).containsExactlyInAnyOrder("report.json", "lay.svg");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", "", " ", " , ,"})
    void anEmptyListOfFilesIsAFinding(String names) {
        Ran ran = run("make", good, "--files", names, "--out", out);
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).startsWith("make: --files: names nothing. Choose: ");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "club, --table, 0",
        "club, --table, 3",
        "club, --table, 1 mm",
        "club, --rounds, '1,2,3'",
        "club, --seconds, -1",
        "lay, --rounds, '1,2,3'",
        "lay, --seconds, 0",
        "lay, --threads, 3"
    })
    void aFindingAboutAnOptionStandsUnderItsCommand(String command, String option, String value) {
        Ran ran = run(command, good, option, value, "--out", out);
        assertThat(ran.code()).isEqualTo(Exit.INPUT);
        assertThat(ran.err()).startsWith(command + ": " + option + ": ");
    }

    @Test
    void theUnitOfATableIsAnOptionToo() throws IOException {
        Path table = Files.writeString(folder.resolve("t.csv"), "figure,stature\nwoman,160\n");
        Ran body = run("body", table, "--unit", "ell", "--out", out);
        assertThat(body.code()).isEqualTo(Exit.INPUT);
        assertThat(body.err()).startsWith("body: --unit: \"ell\" is no unit known here.");
        Ran sizes = run("sizes", good, "--bodies", table, "--unit", "ell", "--out", out);
        assertThat(sizes.code()).isEqualTo(Exit.INPUT);
        assertThat(sizes.err()).startsWith("sizes: --unit: \"ell\" is no unit known here.");
        assertThat(out).doesNotExist();
    }

    @Test
    void whatAfterIsAskedWronglyStandsUnderIt() {
        Ran answer = run("after", good, "folds below the back band", "--answer", "perhaps");
        assertThat(answer.code()).isEqualTo(Exit.INPUT);
        assertThat(answer.err()).startsWith("after: --answer: ");
        assertThat(run("after", good, "band slides down", "--date", "tomorrow").err())
                .startsWith("after: --date: ");
        assertThat(run("after", good, "band slides down", "--write", "--out", out)
                        .err())
                .startsWith("after: --write: ");
        assertThat(run("after", good, "band slides down", "--out", good).err()).contains("after: --out: ");
    }

    /** A folder that cannot be written is told under its own name. */
    @Test
    void aFolderIsToldByItsName() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        assertThat(run("club", good, "--out", file).err()).startsWith(file + ": --out: ");
    }
}
