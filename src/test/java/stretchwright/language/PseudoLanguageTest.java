package stretchwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The program in a language in which every sentence stands between two marks, all examples through all doors: what is shown
 * without marks was written in the code and would stay English in every translation.
 */
class PseudoLanguageTest {
    private static final Path FOLDER = Path.of("target/pseudo");
    private static final long MINUTES = 30;

    @Tag("slow")
    @Test
    void everySentenceComesFromABundle() throws Exception {
        deleted(FOLDER);
        Path bundles = Files.createDirectories(FOLDER.resolve("bundles"));
        Path doors = Files.createDirectories(FOLDER.resolve("doors"));
        PseudoBundles.write(bundles);
        int code = started(bundles, doors);
        assertThat(code).as(Files.readString(FOLDER.resolve("doors.log"))).isZero();
        Unmarked unmarked = new Unmarked(Allowed.of());
        Map<String, String> firstFound = new TreeMap<>();
        try (Stream<Path> files = Files.walk(doors)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                for (String shown : Shown.of(file)) {
                    unmarked.in(shown)
                            .forEach(words -> firstFound.putIfAbsent(
                                    words, doors.relativize(file).toString()));
                }
            }
        }
        assertThat(firstFound.entrySet().stream().map(e -> e.getKey() + "   in " + e.getValue()))
                .isEmpty();
    }

    @Test
    void theGuardFindsEnglish() {
        Unmarked unmarked = new Unmarked(List.of("hip girth"));
        assertThat(unmarked.in("\u00abA whole \u00abinner\u00bb sentence.\u00bb 12 mm 3 in"))
                .isEmpty();
        assertThat(unmarked.in("examples/a.yaml: hip girth: \u00abis missing.\u00bb"))
                .isEmpty();
        assertThat(unmarked.in("\u00abOne.\u00bb Another sentence. \u00abThree.\u00bb"))
                .containsExactly("Another sentence.");
        assertThat(unmarked.in("\u00abnever shut")).isNotEmpty();
    }

    private static int started(Path bundles, Path doors) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-Dstretchwright.language=" + PseudoBundles.LANGUAGE,
                        "-Djava.awt.headless=true",
                        "-cp",
                        bundles + File.pathSeparator + System.getProperty("java.class.path"),
                        PseudoDoors.class.getName(),
                        doors.toString())
                .redirectErrorStream(true)
                .redirectOutput(FOLDER.resolve("doors.log").toFile())
                .start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            return -1;
        }
        return process.exitValue();
    }

    private static void deleted(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
