package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.intake.SampleText;
import tools.jackson.databind.json.JsonMapper;

/** What lies outside the program: full disks, names that cannot be, hostile names, a terminal that is gone. */
class OutsideTest {
    private static final String LONG = "n".repeat(300);

    @TempDir
    private Path folder;

    private Path good;

    @BeforeEach
    void file() throws IOException {
        good = Files.writeString(folder.resolve("good.yaml"), SampleText.WHOLE);
    }

    private static Ran run(Object... args) {
        return Ran.with(CommandsTest.SAMPLE, args);
    }

    private List<String> entries() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }

    /** Standard output as Main opens it, on a device that is always full. */
    @Test
    void outputThatIsLostIsTold() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "no /dev/full here: not looked at");
        for (List<String> words : List.of(
                List.of("body", good.toString()),
                List.of("body", good.toString(), "--json"),
                List.of("body", "--guide"),
                List.of("why", good.toString(), "--json"),
                List.of("after", good.toString()),
                List.of("--version"),
                List.of("make", "--help"))) {
            StringWriter err = new StringWriter();
            try (FileOutputStream device = new FileOutputStream(full.toFile())) {
                Writer out = new OutputStreamWriter(device, StandardCharsets.UTF_8);
                int code = Commands.run(out, err, words.toArray(String[]::new));
                assertThat(code).as(words.toString()).isEqualTo(2);
            }
            assertThat(err.toString()).contains("standard output cannot be written: the disk is full.");
        }
    }

    @Test
    void whyItIsLostIsToldInALine() {
        Ended full = intoBroken("No space left on device");
        assertThat(full.code()).isEqualTo(2);
        assertThat(full.err().strip()).isEqualTo("stretchwright: standard output cannot be written: the disk is full.");
        Ended closed = intoBroken("Broken pipe");
        assertThat(closed.code()).as("head has seen enough").isZero();
        assertThat(closed.err()).isEmpty();
    }

    private record Ended(int code, String err) {}

    private static Ended intoBroken(String why) {
        Writer broken = new Writer() {
            @Override
            public void write(char[] chars, int from, int count) {
                // taken, and lost when it is flushed
            }

            @Override
            public void flush() throws IOException {
                throw new IOException(why);
            }

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        return new Ended(Commands.run(broken, err, "body", "--guide"), err.toString());
    }

    @Test
    void aNameThatIsTooLongIsAFinding() throws IOException {
        List<String> before = entries();
        Ran out = run("make", good, "--out", folder.resolve(LONG));
        assertThat(out.code()).isEqualTo(2);
        assertThat(out.err()).contains("--out: has a name that is too long.").doesNotContain("fault");
        assertThat(run(
                                "make",
                                good,
                                "--out",
                                folder.resolve("new").resolve(LONG).resolve("out"))
                        .err())
                .contains("--out: has a name that is too long.");
        Ran in = run("body", folder.resolve(LONG + ".yaml"));
        assertThat(in.code()).isEqualTo(2);
        assertThat(in.err()).contains("the file cannot be read: its name is too long.");
        Ran after = Ran.of("after", good, "band slides down", "--out", folder.resolve(LONG + ".yaml"));
        assertThat(after.code()).isEqualTo(2);
        assertThat(after.err()).doesNotContain("fault");
        assertThat(entries()).isEqualTo(before);
    }

    @Test
    void aPlaceWhereNothingCanBeWrittenIsAFinding() {
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "no /proc here: not looked at");
        Ran ran = run("make", good, "--out", "/proc/leggings");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("/proc/leggings: --out: ").doesNotContain("fault");
    }

    /** The disk is full at any step: a finding, and what was there before is there. */
    @Test
    void aFullDiskIsAFindingAndTheOldOutputStays() throws IOException {
        Path out = folder.resolve("out");
        TreeMap<String, byte[]> files =
                new TreeMap<>(Map.of("body.json", "{\"bodyCheck\": 1}".getBytes(StandardCharsets.UTF_8)));
        OutFolder.at(out.toString(), new Findings("")).orElseThrow().write(files);
        List<String> before = entries();
        for (String at : List.of("write body.json", "swap", "place")) {
            OutFolder full = OutFolder.at(out.toString(), new Findings(""), step -> {
                        if (step.equals(at)) {
                            thrown(new IOException("No space left on device"));
                        }
                    })
                    .orElseThrow();
            assertThatThrownBy(() -> full.write(files))
                    .isInstanceOfSatisfying(
                            BadInput.class,
                            bad -> assertThat(bad.findings().get(0).line())
                                    .endsWith(
                                            "--out: cannot be written: the disk is full. Make room, or name another folder."));
            assertThat(entries()).isEqualTo(before);
        }
    }

    @SuppressWarnings("unchecked")
    private static <E extends Exception> void thrown(Exception e) throws E {
        throw (E) e;
    }

    @Test
    void namesDoNotSteerTheTerminal() {
        Ran ran = run("body", folder.resolve("a\u001B[31m\u202Eb\u009B\n\u0007.yaml"));
        assertThat(ran.err().strip())
                .contains("a\\u001B[31m\\u202Eb\\u009B \\u0007.yaml: there is no such file.")
                .doesNotContain("\u001B", "\u202E", "\u009B", "\u0007", "\n");
        Ran option = run("body", good, "--\u001B[2J");
        assertThat(option.err()).contains("\\u001B[2J").doesNotContain("\u001B");
    }

    @Test
    void valuesDoNotSteerTheTerminalAndJsonKeepsThem() throws IOException {
        String name = "Ida\u202E\u2066";
        Path file = Files.writeString(
                folder.resolve("hostile.yaml"),
                SampleText.WHOLE.replaceFirst("(?m)^name: .*$", "name: \"Ida\\\\u202E\\\\u2066\""));
        Path out = folder.resolve("out\u202E");
        Ran told = run("make", file, "--out", out);
        assertThat(told.out()).as(told.err()).contains("\\u202E").doesNotContain("\u202E", "\u009B", "\u2066");
        Ran json = run("make", file, "--out", out, "--json");
        assertThat(json.out()).doesNotContain("\u202E", "\u009B", "\u2066");
        assertThat(JsonMapper.builder().build().readTree(json.out()).findValuesAsString("name"))
                .contains(name);
    }

    @Test
    void aNameThatBeginsWithAnAtIsAName() throws IOException {
        Path words = Files.writeString(folder.resolve("words"), "--version");
        Ran ran = run("body", "@" + words);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("@" + words + ": there is no such file.");
    }
}
