package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.Main;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The whole program, stopped from outside while it searches: what it found so far is written, and holds. */
class StopKeyTest {
    private static final String INSTANCE = """
            {"format": "strip-instance/1", "name": "angles", "stripHeight": 40, "rotations": [0, 180], "items": [
              {"id": 0, "demand": 9, "polygon": [[0, 0], [13, 0], [13, 4], [5, 4], [5, 17], [0, 17]]},
              {"id": 1, "demand": 9, "polygon": [[0, 0], [11, 0], [3, 19]]},
              {"id": 2, "demand": 9, "polygon": [[0, 0], [7, 2], [9, 8], [2, 10]]}]}
            """;

    @TempDir
    private Path folder;

    @Tag("slow")
    @Test
    void whatWasFoundIsWritten() throws IOException, InterruptedException {
        Path instance = Files.writeString(folder.resolve("angles.json"), INSTANCE);
        Path out = folder.resolve("out");
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
            process.destroy();
            assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        JsonNode lay = JsonMapper.builder().build().readTree(Files.readAllBytes(out.resolve("lay.json")));
        assertThat(lay.at("/placements").size()).isEqualTo(27);
    }
}
