package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.exchange.DxfReader.Entity;
import stretchwright.make.ExampleHandovers;

/** A general-purpose DXF reader (ezdxf, MIT licence), where Python has it, sees what our own reader sees. */
class SecondReaderTest {
    @TempDir
    private Path folder;

    @Test
    void sameBlocksLayersAndCorners() throws IOException, InterruptedException {
        Optional<String> python = python();
        if (python.isEmpty()) {
            System.out.println("exchange: second reader skipped, no python3 with ezdxf on the path");
        }
        assumeTrue(python.isPresent(), "skipped: no python3 with ezdxf on the path");
        List<String> command = new ArrayList<>(List.of(python.get(), script().toString()));
        List<String> expected = new ArrayList<>();
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            for (OpenFile file : Exchange.files(e.getValue(), OptionalInt.empty())) {
                if (file.name().endsWith(".dxf")) {
                    Path path = folder.resolve(e.getKey() + "-" + file.name());
                    Files.write(path, file.content());
                    command.add(path.toString());
                    expected.addAll(lines(DxfReader.read(file.content())));
                }
            }
        }
        assertThat(run(command)).isEqualTo(expected);
        System.out.printf("exchange: second reader agrees on %d lines%n", expected.size());
        assertThat(expected).hasSizeGreaterThan(10_000);
    }

    private static List<String> lines(DxfReader dxf) {
        List<String> out = new ArrayList<>();
        out.add("FILE AC1009 4 0");
        TreeSet<String> layers = new TreeSet<>(dxf.layers);
        layers.add("Defpoints"); // which that reader adds
        out.add("LAYERS " + String.join(" ", layers));
        dxf.blocks.forEach((name, block) -> {
            out.add("BLOCK " + name);
            block.stream().map(Entity::line).forEach(out::add);
        });
        out.add("ENTITIES");
        dxf.entities.stream().map(Entity::line).forEach(out::add);
        return out;
    }

    private Path script() throws IOException {
        Path script = folder.resolve("second_reader.py");
        try (InputStream in = SecondReaderTest.class.getResourceAsStream("second_reader.py")) {
            Files.copy(Objects.requireNonNull(in), script);
        }
        return script;
    }

    /** The first Python on the path that has the reader; there may be several. */
    private static Optional<String> python() throws InterruptedException {
        for (String place : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            Path python = Path.of(place, "python3");
            try {
                if (Files.isExecutable(python)
                        && !run(List.of(python.toString(), "-c", "import ezdxf;print('yes')"))
                                .isEmpty()) {
                    return Optional.of(python.toString());
                }
            } catch (IOException e) {
                // that one cannot be run: the next
            }
        }
        return Optional.empty();
    }

    private static List<String> run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("second-reader", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            boolean done = process.waitFor(120, TimeUnit.SECONDS);
            if (!done) {
                process.destroyForcibly();
            }
            return done && process.exitValue() == 0 ? Files.readAllLines(out, StandardCharsets.UTF_8) : List.of();
        } finally {
            Files.delete(out);
        }
    }
}
