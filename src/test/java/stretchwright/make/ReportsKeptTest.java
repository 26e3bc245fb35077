package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Progress;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Frozen: the reports of all examples. Every number and every name of the contract must still be there; sentences may differ,
 * and how they do is written to target/sentences, to be read. A change that is meant to change numbers writes them anew:
 * -Dreports.write=true; before the crotch curve was faired they were those of commit fd67c1d.
 */
@Tag("slow")
class ReportsKeptTest {
    private static final Path KEPT = Path.of("src/test/cases/reports");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Told to people and nothing else: in other words they mean the same. */
    private static final Set<String> SENTENCES = Set.of(
            "message",
            "remedy",
            "rule",
            "because",
            "instruction",
            "check",
            "mistake",
            "undo",
            "spread",
            "why",
            "note",
            "reinforcement",
            "changes",
            "change",
            "after",
            "source",
            "kind",
            "thread",
            "bound");

    static Stream<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(KEPT)) {
            return files.map(f -> f.getFileName().toString().replace(".json.gz", "")).sorted().toList().stream();
        }
    }

    @Test
    void everyExampleOfThatTimeIsKept() throws IOException {
        assertThat(examples()).hasSize(16);
    }

    private static void write(String example) throws IOException {
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(KEPT.resolve(example + ".json.gz")))) {
            JSON.writeValue(out, now(example));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyNumberIsAsItWas(String example) throws IOException {
        if (Boolean.getBoolean("reports.write")) {
            write(example);
        }
        List<String> differ = new ArrayList<>();
        List<String> worded = new ArrayList<>();
        compare("", before(example), now(example), differ, worded);
        Path sentences = Files.createDirectories(Path.of("target/sentences"));
        Files.write(sentences.resolve(example + ".txt"), worded);
        assertThat(differ).isEmpty();
    }

    private static JsonNode before(String example) throws IOException {
        try (InputStream in = new GZIPInputStream(Files.newInputStream(KEPT.resolve(example + ".json.gz")))) {
            return JSON.readTree(in);
        }
    }

    private static JsonNode now(String example) throws IOException {
        byte[] text = Files.readAllBytes(Path.of("examples", example + ".yaml"));
        return JSON.readTree(
                Make.run(Make.read(example, text), Progress.silent()).report().bytes());
    }

    private static void compare(String at, JsonNode before, JsonNode now, List<String> differ, List<String> worded) {
        if (before.isObject() && now.isObject()) {
            before.propertyNames().forEach(n -> {
                if (!now.has(n)) {
                    differ.add(at + "/" + n + " is gone");
                } else {
                    compare(at + "/" + n, before.get(n), now.get(n), differ, worded);
                }
            });
            now.propertyNames().stream()
                    .filter(n -> !before.has(n))
                    .filter(n -> !(at.isEmpty() && Set.of("files", "program").contains(n)))
                    .forEach(n -> differ.add(at + "/" + n + " is new"));
        } else if (before.isArray() && now.isArray() && before.size() == now.size()) {
            for (int i = 0; i < before.size(); i++) {
                compare(at + "/" + i, before.get(i), now.get(i), differ, worded);
            }
        } else if (before.isNumber() && now.isNumber()) {
            if (before.doubleValue() != now.doubleValue()) {
                differ.add(at + ": " + before + " became " + now);
            }
        } else if (!before.equals(now)) {
            boolean sentence = before.isString()
                    && now.isString()
                    && SENTENCES.contains(at.replaceAll("(/[0-9]+)*$", "").replaceAll(".*/", ""));
            (sentence ? worded : differ).add(at + ":\n  " + before + "\n  " + now);
        }
    }
}
