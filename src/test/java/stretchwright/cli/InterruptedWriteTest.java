package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Findings;
import stretchwright.intake.SampleText;

/** Writing that is broken off at any step: the old output or the new one, whole. */
class InterruptedWriteTest {
    @TempDir
    Path folder;

    private Path good;

    @BeforeEach
    void file() throws IOException {
        good = Files.writeString(folder.resolve("good.yaml"), SampleText.WHOLE);
    }

    private int make(Path out) {
        PrintWriter nobody = new PrintWriter(new StringWriter());
        String[] words = {"make", good.toString(), "--out", out.toString(), "--quiet"};
        return Commands.run(CommandsTest.SAMPLE, nobody, nobody, words);
    }

    private List<String> entries() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).toList();
        }
    }

    private Map<String, String> content(Path of) throws IOException {
        return CommandsTest.content(of);
    }

    /** Every step of replacing an older output fails once: what is there afterwards is the old or the new, whole. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"write a.txt", "write report.json", "write sub/b.txt", "swap", "place"})
    void anInterruptedWriteLeavesTheOldOutput(String at) throws IOException {
        Path out = folder.resolve("out");
        make(out);
        Map<String, String> before = content(folder);
        TreeMap<String, byte[]> files =
                new TreeMap<>(Map.of("a.txt", new byte[9], "report.json", new byte[] {1}, "sub/b.txt", new byte[3]));
        OutFolder breaking = OutFolder.at(out.toString(), new Findings(""), step -> {
                    if (step.equals(at)) {
                        throw new IllegalStateException("interrupted at " + step);
                    }
                })
                .orElseThrow();
        assertThatThrownBy(() -> breaking.write(files)).hasMessageContaining("interrupted at " + at);
        assertThat(content(folder)).isEqualTo(before);
        assertThat(entries()).noneMatch(e -> e.contains(".stretchwright-"));
        assertThat(make(out)).isEqualTo(0);
    }

    @Tag("slow")
    @Test
    void anOutputLeftAsideByAKilledRunIsPutBack() throws IOException {
        Path out = folder.resolve("out");
        make(out);
        Files.move(out, folder.resolve(".out.stretchwright-old"));
        assertThat(make(out)).isEqualTo(0);
        assertThat(entries()).noneMatch(e -> e.contains(".stretchwright-"));
        assertThat(out.resolve("report.json")).exists();
    }
}
