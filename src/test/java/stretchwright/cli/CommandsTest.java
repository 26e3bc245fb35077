package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.make.Made;
import stretchwright.make.SampleRooms;
import stretchwright.report.Program;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The real command line with sample rooms for body, draft and fit behind it, in a folder of its own. */
class CommandsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @TempDir
    Path folder;

    private Path good;
    private Path firm;
    private Path bad;

    @BeforeEach
    void files() throws IOException {
        good = Files.writeString(folder.resolve("good.yaml"), SampleText.WHOLE);
        firm = Files.writeString(
                folder.resolve("firm.yaml"), SampleText.with("stretch across: 60 %", "stretch across: 8 %"));
        bad = Files.writeString(
                folder.resolve("bad.yaml"),
                SampleText.WHOLE.replace("60 %\n", "60\n").replace("unit: cm", "unit: parsec"));
    }

    static final Jobs SAMPLE = new Jobs() {
        @Override
        public MakeFile read(String fileName, byte[] bytes) {
            return SampleRooms.read(fileName, bytes);
        }

        @Override
        public Made run(MakeFile make, Progress progress) {
            return SampleRooms.run(make, progress);
        }
    };

    private static Ran run(Object... args) {
        return Ran.with(SAMPLE, args);
    }

    private List<String> entries() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> !p.equals(folder))
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Tag("slow")
    @Test
    void aMakeIsWrittenWithItsReportAndToldShortly() throws IOException {
        Path out = folder.resolve("new/out");
        Ran ran = run("make", good, "--out", out);
        assertThat(ran.err()).contains("draft: 3 pieces", "caution: hem over heel:", "note: hip:");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(ran.out()).contains("Evening practice", "fabric to buy", "minutes", "pages", out.toString());
        JsonNode report = JSON.readTree(Files.readAllBytes(out.resolve("report.json")));
        List<String> listed = new ArrayList<>();
        for (JsonNode file : report.get("files")) {
            String name = file.get("name").asString();
            listed.add(name);
            assertThat(Files.size(out.resolve(name)))
                    .as(name)
                    .isEqualTo(file.get("bytes").asLong());
        }
        try (Stream<Path> written = Files.list(out)) {
            assertThat(written.map(p -> p.getFileName().toString())).containsExactlyInAnyOrderElementsOf(listed);
        }
    }

    /** What is asked for wrongly is told before any work, together with what is wrong in the file. */
    @Test
    void filesThatAreNotKnownAreToldAtOnce() throws IOException {
        Ran ran = run("make", good, bad, "--files", "lay,nonsense", "--out", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("--files: \"nonsense\" is no kind of file that is known here.", "unit: line")
                .doesNotContain("draft: ");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Tag("slow")
    @Test
    void aGarmentThatCannotWorkIsWrittenAndSaysWhy() {
        Ran ran = run("make", firm, "--out", folder.resolve("out"), "--quiet");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith("stop: hem over heel: The hem must stretch 16 %. What turns it: ")
                .contains("cloth of 20 % or more across - then a caution")
                .endsWith(System.lineSeparator());
        assertThat(folder.resolve("out/report.json")).exists();
    }

    @Tag("slow")
    @Test
    void findingsOfAllFilesAreToldAndNothingIsWritten() throws IOException {
        List<String> before = entries();
        Path missing = folder.resolve("missing.yaml");
        Ran ran = run("make", good, bad, missing, "--out", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines().filter(l -> l.startsWith(bad + ": "))).hasSize(2);
        assertThat(ran.err()).contains(missing + ": there is no such file.");
        assertThat(ran.err()).contains(bad + ": fabric.stretch across: line 17: \"60\" has no unit.");
        assertThat(entries()).isEqualTo(before);
    }

    @Tag("slow")
    @Test
    void withJsonNothingElseIsOnStandardOutput() {
        Ran one = run("make", firm, "--out", folder.resolve("a"), "--json");
        assertThat(one.code()).isEqualTo(3);
        assertThat(JSON.readTree(one.out())
                        .get("fit")
                        .get("verdicts")
                        .get(1)
                        .get("severity")
                        .asString())
                .isEqualTo("stop");
        Ran two = run("--json", "make", good, firm, "--out", folder.resolve("b"));
        assertThat(two.code()).isEqualTo(3);
        JsonNode both = JSON.readTree(two.out());
        assertThat(both.isArray()).isTrue();
        assertThat(both).hasSize(2);
        Ran wrong = run("make", bad, "--out", folder.resolve("c"), "--json");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.out()).isEmpty();
    }

    @Tag("slow")
    @Test
    void severalFilesGetAFolderEachAlsoWithTheSameName() throws IOException {
        Files.createDirectory(folder.resolve("other"));
        Path twin = Files.copy(good, folder.resolve("other/Good.yaml"));
        Ran ran = run("make", good, twin, "--out", folder.resolve("out"), "--quiet");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(folder.resolve("out/good/report.json")).exists();
        assertThat(folder.resolve("out/Good-2/report.json")).exists();
        assertThat(run("make", good, twin, "--out", folder.resolve("out"), "--quiet")
                        .code())
                .isEqualTo(0);
    }

    @Test
    void theSameMakeGivesTheSameBytes() throws IOException {
        run("make", good, "--out", folder.resolve("a"));
        run("make", good, "--out", folder.resolve("b"));
        assertThat(content(folder.resolve("a")))
                .isEqualTo(content(folder.resolve("b")))
                .isNotEmpty();
    }

    static Map<String, String> content(Path of) throws IOException {
        Map<String, String> content = new TreeMap<>();
        if (Files.exists(of)) {
            try (Stream<Path> all = Files.walk(of)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    content.put(of.relativize(file).toString(), hash(Files.readAllBytes(file)));
                }
            }
        }
        return content;
    }

    private static String hash(byte[] bytes) {
        return bytes.length + ":" + java.util.Arrays.hashCode(bytes);
    }

    @Tag("slow")
    @Test
    void anOlderOutputIsReplacedAsAWhole() throws IOException {
        Path out = folder.resolve("out");
        run("make", good, firm, "--out", out);
        assertThat(run("make", good, "--out", out).code()).isEqualTo(0);
        assertThat(out.resolve("good")).doesNotExist();
        assertThat(out.resolve("report.json")).exists();
        assertThat(entries()).noneMatch(e -> e.contains(".stretchwright-"));
    }

    @Tag("slow")
    @Test
    void aFolderWithForeignFilesIsRefusedAndUntouched() throws IOException {
        Path out = folder.resolve("out");
        run("make", good, "--out", out);
        Files.writeString(out.resolve("notes.txt"), "mine");
        Map<String, String> before = content(folder);
        Ran ran = run("make", firm, "--out", out);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(out + ": --out: holds what this program did not write (notes.txt).");
        assertThat(content(folder)).isEqualTo(before);
    }

    @Test
    void anOutThatCannotBeIsAFinding() throws IOException {
        assertThat(run("make", good, "--out", good).err()).contains("--out: is a file, not a folder.");
        assertThat(run("make", good, "--out", good.resolve("x/y")).err())
                .contains("lies inside good.yaml, which is a file");
        assertThat(run("make", good, "--out", ".").err()).contains("the folder you are working in");
        Ran both = run("make", bad, "--out", good);
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("--out: is a file").contains("unit: line 3");
    }

    @Test
    void aHugeFileIsRefusedWithoutBeingRead() throws IOException {
        Path huge = folder.resolve("huge.yaml");
        try (var file = new java.io.RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(50L * 1024 * 1024);
        }
        Ran ran = run("make", huge, "--out", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("larger than 1 MB; it was not read");
        assertThat(run("make", folder, "--out", folder.resolve("out")).err()).contains("is a folder");
    }

    @Test
    void aFaultIsOneLineAndTheTraceIsToBeHad() {
        Jobs broken = new Jobs() {
            @Override
            public MakeFile read(String fileName, byte[] bytes) {
                throw new IllegalStateException("two\nlines");
            }

            @Override
            public Made run(MakeFile make, Progress progress) {
                throw new AssertionError();
            }
        };
        Ran ran = Ran.with(broken, "make", good, "--out", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains("two lines").contains("--trace");
        assertThat(Ran.with(broken, "make", good, "--out", folder.resolve("out"), "--trace")
                        .err())
                .contains("at stretchwright.cli.MakeCommand");
    }

    @Test
    void wrongArgumentsAndHelp() {
        assertThat(run("make").code()).isEqualTo(2);
        assertThat(run("make", good).err().lines()).hasSize(1);
        assertThat(run("mkae").code()).isEqualTo(2);
        assertThat(run().code()).isEqualTo(2);
        assertThat(run("--help").out()).contains("make", "lay", "Exit codes");
        assertThat(run("make", "--help").out()).contains("--out", "--json");
        assertThat(run("--version").out().strip()).isEqualTo("stretchwright " + Program.VERSION);
    }

    private static final String SQUARES = """
            {"format": "strip-instance/1", "name": "squares", "stripHeight": 2, "rotations": [0],
             "items": [{"id": "s", "demand": 4, "polygon": [[0, 0], [1, 0], [1, 1], [0, 1]]}]}
            """;

    /** By hand: four unit squares on a strip of 2 need a length of 2 and fill it. */
    @Test
    void aPlainInstanceIsLaid() throws IOException {
        Path file = Files.writeString(folder.resolve("squares.json"), SQUARES);
        Path out = folder.resolve("out");
        Ran ran = run("lay", file, "--seconds", "0.2", "--seed", "5", "--out", out, "--json");
        assertThat(ran.err()).contains("lay: ");
        assertThat(ran.code()).isEqualTo(0);
        JsonNode lay = JSON.readTree(Files.readAllBytes(out.resolve("lay.json")));
        assertThat(JSON.readTree(ran.out())).isEqualTo(lay);
        assertThat(lay.get("instance").asString()).isEqualTo("squares");
        assertThat(lay.get("seed").asLong()).isEqualTo(5);
        assertThat(lay.get("width").asDouble()).isEqualTo(2);
        assertThat(lay.get("length").asDouble()).isEqualTo(2);
        assertThat(lay.get("density").asDouble()).isEqualTo(1);
        assertThat(lay.get("placements")).hasSize(4);
        assertThat(lay.get("history")).isNotEmpty();
        assertThat(Files.readString(out.resolve("lay.svg"))).contains("<path").contains("</svg>");
        assertThat(run("lay", file, "--seconds", "0.1", "--out", out).code()).isEqualTo(0);
    }

    @Test
    void aBadInstanceIsRefused() throws IOException {
        Map<String, String> spoiled = Map.of(
                "\"strip-instance/1\"", "\"other\"",
                "\"stripHeight\": 2", "\"stripHeight\": -2",
                "\"demand\": 4", "\"demand\": 0.5",
                "[[0, 0], [1, 0], [1, 1], [0, 1]]", "[[0, 0], [0, 1], [1, 1], [1, 0]]",
                "[1, 1], [0, 1]]", "[0, 1], [1, 1]]",
                "[0, 0],", "[0, 1e999],",
                "\"rotations\": [0]", "\"rotations\": []",
                "\"id\": \"s\"", "\"id\": \"\"",
                "]}", "]");
        for (Map.Entry<String, String> change : spoiled.entrySet()) {
            assertThat(SQUARES).contains(change.getKey());
            Path file =
                    Files.writeString(folder.resolve("bad.json"), SQUARES.replace(change.getKey(), change.getValue()));
            Ran ran = run("lay", file, "--seconds", "0.1", "--out", folder.resolve("out"));
            assertThat(ran.code()).as(change + " " + ran.err()).isEqualTo(2);
            assertThat(ran.err()).startsWith(file + ": ");
            assertThat(folder.resolve("out")).doesNotExist();
        }
    }

    /** Two million angles: said at once. */
    @Test
    void moreAnglesThanAreTriedAreRefused() throws IOException {
        String angles =
                IntStream.range(0, 2_000_000).mapToObj(Integer::toString).collect(Collectors.joining(","));
        Path file = Files.writeString(
                folder.resolve("angles.json"),
                SQUARES.replace("\"rotations\": [0]", "\"rotations\": [" + angles + "]"));
        Ran ran = run("lay", file, "--seconds", "0.1", "--out", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("rotations: lists 2000000 angles; at most 3600 are tried.");
    }

    @Test
    void aBudgetThatCannotBeIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("squares.json"), SQUARES);
        for (String seconds : List.of("0", "-1", "NaN", "1e9")) {
            assertThat(run("lay", file, "--seconds=" + seconds, "--out", folder.resolve("out"))
                            .code())
                    .isEqualTo(2);
        }
    }
}
