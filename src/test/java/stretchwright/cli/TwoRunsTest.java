package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.Main;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.make.Made;

/** Two runs with one folder for their output: the second is told to wait, and who died holds nobody up. */
class TwoRunsTest {
    private static final String INSTANCE = """
            {"format": "strip-instance/1", "name": "angles", "stripHeight": 40, "rotations": [0, 180], "items": [
              {"id": 0, "demand": 9, "polygon": [[0, 0], [13, 0], [13, 4], [5, 4], [5, 17], [0, 17]]},
              {"id": 1, "demand": 9, "polygon": [[0, 0], [11, 0], [3, 19]]}]}
            """;

    @TempDir
    private Path folder;

    private Path good;
    private Path instance;
    private Path out;

    @BeforeEach
    void files() throws IOException {
        good = Files.writeString(folder.resolve("good.yaml"), SampleText.WHOLE);
        instance = Files.writeString(folder.resolve("angles.json"), INSTANCE);
        out = folder.resolve("out");
    }

    private List<String> hidden() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString())
                    .filter(n -> n.startsWith("."))
                    .toList();
        }
    }

    private void isToldToWait(Path where) {
        Ran second = Ran.with(CommandsTest.SAMPLE, "make", good, "--out", where);
        assertThat(second.code()).isEqualTo(2);
        assertThat(second.err()).contains(where + ": --out: another run is writing there. Wait until it has ended");
    }

    @Test
    void theSecondIsToldToWait() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        Jobs slow = new Jobs() {
            @Override
            public MakeFile read(String fileName, byte[] bytes) {
                return CommandsTest.SAMPLE.read(fileName, bytes);
            }

            @Override
            public Made run(MakeFile make, Progress progress) {
                begun.countDown();
                try {
                    go.await();
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
                return CommandsTest.SAMPLE.run(make, progress);
            }
        };
        ExecutorService first = Executors.newSingleThreadExecutor();
        try {
            Future<Ran> ran = first.submit(() -> Ran.with(slow, "make", good, "--out", out));
            assertThat(begun.await(60, TimeUnit.SECONDS))
                    .as(String.valueOf(ran.isDone() ? ran.get() : ""))
                    .isTrue();
            isToldToWait(out);
            go.countDown();
            assertThat(ran.get(60, TimeUnit.SECONDS).code()).isZero();
        } finally {
            go.countDown();
            first.shutdownNow();
        }
        assertThat(out.resolve("report.json")).exists();
        assertThat(hidden()).isEmpty();
        assertThat(Ran.with(CommandsTest.SAMPLE, "make", good, "--out", out).code())
                .isZero();
    }

    /** Another process has the folder; it is killed, and cannot tidy up. */
    @Tag("slow")
    @Test
    void whatAKilledRunLeavesHoldsNobodyUp() throws Exception {
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "lay",
                        instance.toString(),
                        "--seconds",
                        "600",
                        "--out",
                        out.toString()))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader progress = process.errorReader(StandardCharsets.UTF_8)) {
            assertThat(progress.readLine()).contains("length");
            isToldToWait(out);
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(out).doesNotExist();
        assertThat(hidden()).isNotEmpty();
        assertThat(Ran.with(CommandsTest.SAMPLE, "make", good, "--out", out).code())
                .isZero();
        assertThat(hidden()).isEmpty();
    }

    @Test
    void aRunThatRefusesItsInputLeavesNothing() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "unit: parsec");
        assertThat(Ran.with(CommandsTest.SAMPLE, "make", bad, "--out", out).code())
                .isEqualTo(2);
        assertThat(hidden()).isEmpty();
    }

    /** The folder around it is not there yet, so it cannot be taken before it is written. */
    @Test
    void aFolderInANewFolderIsWritten() throws IOException {
        Path deep = folder.resolve("new/deep/out");
        assertThat(Ran.with(CommandsTest.SAMPLE, "make", good, "--out", deep).code())
                .isZero();
        try (Stream<Path> beside = Files.list(deep.getParent())) {
            assertThat(beside).containsExactly(deep);
        }
    }
}
