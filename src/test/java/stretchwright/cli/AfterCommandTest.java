package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The after command on copies of an example: what it says, asks, writes and refuses. */
class AfterCommandTest {
    private static final String FOLDS = "folds below the back band";

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

    private int after(String... args) {
        String[] all = new String[args.length + 2];
        all[0] = "after";
        all[1] = file.toString();
        System.arraycopy(args, 0, all, 2, args.length);
        return run(all);
    }

    @Test
    void theSymptomsAreListed() {
        assertThat(after()).isZero();
        assertThat(out).contains("band slides down\n", FOLDS + "  (asks)\n", "hem wavy\n");
    }

    @Test
    void aSymptomWithTwoOppositeCuresAsksFirst() {
        assertThat(after(FOLDS)).isEqualTo(Exit.INPUT);
        assertThat(err).contains("Pull the cloth down over the seat", "--answer yes");
        assertThat(after(FOLDS, "--answer", "yes")).isZero();
        assertThat(out).contains("ease at hip: +1.0 cm", "hip +1.0 cm");
        assertThat(after(FOLDS, "--answer", "no")).isZero();
        assertThat(out).contains("back waist: -0.6 cm");
        assertThat(file).hasContent(old);
    }

    /** A make file that others may read stays so. */
    @Tag("slow")
    @Test
    void writingKeepsWhoMayReadTheFile() throws IOException {
        assumeThat(file.getFileSystem().supportedFileAttributeViews()).contains("posix");
        Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw-r--");
        Files.setPosixFilePermissions(file, shared);
        assertThat(after("band slides down", "--write")).isZero();
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(shared);
    }

    @Test
    void whatIsWrongIsSaid() {
        assertThat(after("folds under the bak band")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("folds below the back band");
        assertThat(after("nonsense")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("lists them");
        assertThat(after(FOLDS, "--answer", "maybe")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("neither yes nor no");
        assertThat(after("band slides down", "--answer", "yes")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("answers nothing");
        assertThat(after("band slides down", "--date", "tomorrow")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("year-month-day");
    }

    @Test
    void whatIsInTheClothChangesNothing() {
        assertThat(after("baggy knees", "--write")).isZero();
        assertThat(out).contains("in the cloth", "none: the pattern stays");
        assertThat(file).hasContent(old);
    }

    @Test
    void theOldTextStaysAndTheHistoryGrows() throws IOException {
        assertThat(after(FOLDS, "--answer", "yes", "--write", "--date", "2026-01-31"))
                .isZero();
        String first = Files.readString(file);
        assertThat(first)
                .isEqualTo(old + "\nafter wearing:\n  - date: 2026-01-31\n    symptom: " + FOLDS
                        + "\n    answer: \"yes\"\n    change: {ease at hip: +10 mm}\n");
        assertThat(after("band drops at the back when sitting", "--write", "--date", "2026-02-14"))
                .isZero();
        assertThat(Files.readString(file))
                .isEqualTo(first + "  - date: 2026-02-14\n    symptom: band drops at the back when sitting\n"
                        + "    change: {back waist: +15 mm}\n");
        // the next make starts from both: 10 mm more round the hip
        assertThat(hipWidth(file.toString())).isEqualTo(hipWidth("examples/evening-practice.yaml") + 1, within(0.011));
    }

    /** In cm, as the why command tells it. */
    private double hipWidth(String make) {
        assertThat(run("why", make, "hip width")).isZero();
        return Double.parseDouble(out.lines().findFirst().orElseThrow().replaceAll("[^0-9.]", ""));
    }

    @Test
    void anotherFileIsWrittenOnlyWhereNoneIs() throws IOException {
        Path other = folder.resolve("next.yaml");
        assertThat(after("band slides down", "--out", other.toString())).isZero();
        assertThat(file).hasContent(old);
        assertThat(Files.readString(other)).startsWith(old).contains("ease at crotch: +10 mm");
        assertThat(after("band slides down", "--out", other.toString())).isEqualTo(Exit.INPUT);
        assertThat(err).contains("there already");
    }

    @Test
    void beyondTheBoundsItSaysToMeasureAgain() {
        assertThat(after("band slides down", "--write")).isZero();
        assertThat(after("band slides down", "--write")).isZero();
        assertThat(after("band slides down", "--write")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("Measure again instead");
    }

    @Test
    void linesOfAnotherSystemAndAMissingLastLineAreKept() throws IOException {
        String windows = old.replace("\n", "\r\n").stripTrailing();
        Files.writeString(file, windows);
        assertThat(after("band slides down", "--write", "--date", "2026-01-31")).isZero();
        String now = Files.readString(file);
        assertThat(now).startsWith(windows + "\r\n\r\nafter wearing:\r\n").endsWith("{ease at crotch: +10 mm}\r\n");
        assertThat(now.replace("\r\n", "")).doesNotContain("\n");
        assertThat(after("too tight at the calf", "--write", "--date", "2026-02-01"))
                .isZero();
        assertThat(Files.readString(file)).startsWith(now).endsWith("{ease at calf: +10 mm}\r\n");
    }

    @Test
    void aSectionInTheMiddleGrowsWhereItStands() throws IOException {
        String section = "after wearing:   # mine\n- date: 2025-12-01\n  symptom: band slides down\n  change:\n"
                + "    ease at crotch: 5 mm\n\n# the machines\nmachines:";
        String text = old.replace("machines:", section);
        Files.writeString(file, text);
        assertThat(after("too tight at the calf", "--write", "--date", "2026-02-01"))
                .isZero();
        assertThat(Files.readString(file))
                .isEqualTo(
                        text.replace(
                                "5 mm\n",
                                "5 mm\n- date: 2026-02-01\n  symptom: too tight at the calf\n  change: {ease at calf: +10 mm}\n"));
    }

    @Test
    void jsonAndListsInBracketsAreLeftToTheHand() throws IOException {
        String flow = old
                + "\nafter wearing: [{date: 2026-01-01, symptom: band slides down, change: {ease at crotch: 5 mm}}]\n";
        Files.writeString(file, flow);
        assertThat(after("too tight at the calf", "--write")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("Add by hand");
        assertThat(file).hasContent(flow);
        String json = "{\"stretchwright\": 1, \"name\": \"J\", \"unit\": \"cm\", \"wearer\": {\"figure\": \"woman\","
                + " \"measurements\": {\"hip girth\": 96.1}}, \"fabric\": {\"usable width\": 147, \"stretch across\": \"60 %\","
                + " \"stretch along\": \"45 %\"}}";
        Files.writeString(file, json);
        assertThat(after("too tight at the calf", "--write", "--date", "2026-02-01"))
                .isEqualTo(Exit.INPUT);
        assertThat(err).contains("JSON", "\"ease at calf\": \"+10 mm\"");
        assertThat(file).hasContent(json);
    }

    @Test
    void aBrokenHistoryIsFoundByTheReader() throws IOException {
        String head = old + "\nafter wearing:\n";
        Files.writeString(file, head + "  - {date: 31.1.2026, symptom: band slips, change: {waist: 3}}\n");
        assertThat(after("band slides down")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("after wearing.1.date", "after wearing.1.symptom", "after wearing.1.change.waist");
        Files.writeString(
                file, head + "  - {date: 2026-01-31, symptom: " + FOLDS + ", change: {back waist: -10 mm}}\n");
        assertThat(after("band slides down")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("after wearing.1.answer", "is missing");
        Files.writeString(
                file,
                head + "  - {date: 2026-01-31, symptom: sag below the seat, change: {back waist: -20 mm}}\n"
                        + "  - {date: 2026-02-28, symptom: sag below the seat, change: {back waist: -20 mm}}\n");
        assertThat(after("band slides down")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("add up to -4.0 cm", "Measure again instead");
    }

    @Test
    void aSectionThatIsNoListIsAFinding() throws IOException {
        Files.writeString(file, old + "\nafter wearing: soon\n");
        assertThat(after("band slides down")).isEqualTo(Exit.INPUT);
        assertThat(err).contains("a list is wanted");
    }
}
