package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The after command where the file resists, the history is full, and where a program asks instead of a person. */
class AfterEdgesTest {
    private static final String SLIDES = "band slides down";

    @TempDir
    Path folder;

    private Path file = Path.of("");
    private String old = "";
    private String out = "";
    private String err = "";

    @BeforeEach
    void copied() throws IOException {
        old = Files.readString(Path.of("examples/evening-practice.yaml"));
        file = folder.resolve("make.yaml");
        Files.writeString(file, old);
    }

    private int run(String... args) {
        Ran ran = Ran.of((Object[]) args);
        out = ran.out();
        err = ran.err();
        return ran.code();
    }

    private JsonNode json() {
        return JsonMapper.builder().build().readTree(out);
    }

    /** Replacing a file by a renamed one needs no right to write it: whoever locked it did so for a reason. */
    @Test
    void aFileThatMayNotBeWrittenStaysAsItIs() throws IOException {
        assumeThat(file.getFileSystem().supportedFileAttributeViews()).contains("posix");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertThat(run("after", file.toString(), SLIDES, "--write")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("may not be written");
        assertThat(file).hasContent(old);
        assertThat(run("after", file.toString(), SLIDES)).isZero();
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        String next = folder.resolve("none/next.yaml").toString();
        assertThat(run("after", file.toString(), SLIDES, "--out", next)).isEqualTo(Exit.INPUT);
        assertThat(err).contains("there is no folder");
    }

    @Test
    void oneOfTwoPlacesToWriteMustBeChosen() throws IOException {
        Path next = folder.resolve("next.yaml");
        assertThat(run("after", file.toString(), SLIDES, "--write", "--out", next.toString()))
                .isEqualTo(Exit.INPUT);
        assertThat(err).contains("--write", "one of them");
        assertThat(next).doesNotExist();
        assertThat(file).hasContent(old);
    }

    /** Adding one by hand would break the file: say what is so instead. */
    @Test
    void aFullHistorySaysSo() throws IOException {
        String entry = "  - {date: 2026-01-01, symptom: too tight at the calf, change: {ease at calf: 0.1 mm}}\n";
        Files.writeString(file, old + "after wearing:\n" + entry.repeat(40));
        assertThat(run("after", file.toString(), SLIDES, "--write")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("40").doesNotContain("Add by hand");
        Files.writeString(file, old + "after wearing:\n" + entry.repeat(39));
        assertThat(run("after", file.toString(), SLIDES, "--write")).as(err).isZero();
    }

    @Test
    void jsonListsTheSymptomsAndTheirQuestions() {
        assertThat(run("--json", "after", file.toString())).isZero();
        JsonNode all = json().at("/after/symptoms");
        assertThat(all.get(0).path("symptom").asString()).isEqualTo(SLIDES);
        assertThat(all.get(0).has("question")).isFalse();
        assertThat(all.get(3).path("question").asString()).contains("Pull the cloth down");
    }

    @Test
    void jsonTellsTheChangeAndWhatItDoes() {
        assertThat(run("after", file.toString(), SLIDES, "--json", "--date", "2026-01-31"))
                .isZero();
        JsonNode after = json().get("after");
        assertThat(after.path("symptom").asString()).isEqualTo(SLIDES);
        assertThat(after.path("why").asString()).contains("thigh width");
        assertThat(after.at("/change/ease at crotch").asDouble()).isEqualTo(10);
        assertThat(after.at("/bounds/ease at crotch").asDouble()).isEqualTo(20);
        assertThat(after.at("/pattern/0/by").asDouble()).isPositive();
        assertThat(after.at("/fit/after/notes").asInt()).isPositive();
        assertThat(after.path("date").asString()).isEqualTo("2026-01-31");
        assertThat(after.has("written")).isFalse();
        assertThat(file).hasContent(old);
        assertThat(run("after", file.toString(), SLIDES, "--json", "--write")).isZero();
        assertThat(json().at("/after/written").asString()).isEqualTo(file.toString());
    }

    @Test
    void jsonOfACureOutsideThePatternHasNoChange() {
        assertThat(run("after", file.toString(), "baggy knees", "--json")).isZero();
        assertThat(json().at("/after/why").asString()).contains("in the cloth");
        assertThat(json().at("/after/change").isEmpty()).isTrue();
    }
}
