package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every sentence that a screen or a template asks for is there, and none is there that nobody asks for. */
class WordsOfThePageTest {
    private static final Path WORDS = Path.of("src/main/resources/stretchwright/web/words.properties");
    private static final Path WORDS_OF_DRAWINGS = Path.of("src/main/resources/stretchwright/web/draw/words.properties");
    private static final Pattern ASKED = Pattern.compile("\\b(?:say|said)\\(\\s*\"([a-z0-9.-]+)\"");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z0-9-]+\\.[a-z0-9.-]+)\"");

    private static String sources() {
        try (Stream<Path> pages = Files.walk(Path.of("src/main/jte"));
                Stream<Path> rooms = Files.walk(Path.of("src/main/java/stretchwright/web"))) {
            return Stream.concat(pages, rooms)
                    .filter(Files::isRegularFile)
                    .filter(p -> !p.toString().contains("draw"))
                    .map(WordsOfThePageTest::text)
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> keys(Path file) throws IOException {
        Properties words = new Properties();
        try (var in = Files.newBufferedReader(file)) {
            words.load(in);
        }
        return new TreeSet<>(words.stringPropertyNames());
    }

    private static Set<String> found(Pattern pattern) {
        return pattern.matcher(sources()).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatIsAskedForIsThere() throws IOException {
        Set<String> asked = found(ASKED);
        asked.removeIf(key -> !key.contains("."));
        assertThat(asked).hasSizeGreaterThan(200);
        asked.removeAll(keys(WORDS));
        assertThat(asked).isEmpty();
    }

    @Test
    void whatIsThereIsAskedFor() throws IOException {
        Set<String> idle = keys(WORDS);
        idle.removeAll(found(LITERAL));
        assertThat(idle).isEmpty();
        assertThat(keys(WORDS_OF_DRAWINGS)).isNotEmpty();
    }
}
