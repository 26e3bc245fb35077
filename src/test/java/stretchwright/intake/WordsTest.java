package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentences of the make file and of the page: each is used, and each that is used is there. */
class WordsTest {
    private static final Pattern LITERAL = Pattern.compile("\"([a-z0-9-]+(?:\\.[a-z0-9-]+)*)\"");
    private static final Pattern SAID = Pattern.compile("(?:Tell\\.said|\\bsay)\\(\\s*\"([a-z0-9.-]+)\"");

    private static Stream<String> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all
                    .filter(p -> p.toString().matches(".*\\.(java|jte)"))
                    .filter(p -> !hasItsOwn(p, folder))
                    .map(WordsTest::text)
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A room inside may have sentences of its own. */
    private static boolean hasItsOwn(Path file, Path room) {
        Path inside = room.relativize(file).subpath(0, 1);
        Path words = Path.of(room.toString().replace("java", "resources"), inside.toString(), "words.properties");
        return Files.exists(words);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> code(String room) {
        Stream<String> java = files(Path.of("src/main/java/stretchwright", room));
        return (room.equals("web") ? Stream.concat(java, files(Path.of("src/main/jte"))) : java).toList();
    }

    private static Set<String> found(Pattern pattern, String room) {
        Set<String> out = new TreeSet<>();
        for (String file : code(room)) {
            Matcher m = pattern.matcher(file);
            while (m.find()) {
                out.add(m.group(1));
            }
        }
        return out;
    }

    /** Labels and helps are asked for by the rows: KeysTest holds those against the table. */
    private static Set<String> keys(String room) {
        return ResourceBundle.getBundle("stretchwright." + room + ".words").keySet().stream()
                .filter(k -> !room.equals("intake") || !(k.endsWith(".label") || k.endsWith(".help")))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"intake", "web"})
    void everySentenceIsUsed(String room) {
        Set<String> idle = keys(room);
        idle.removeAll(found(LITERAL, room));
        assertThat(idle).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"intake", "web"})
    void everySentenceThatIsSaidIsThere(String room) {
        assertThat(keys(room)).containsAll(found(SAID, room));
    }

    /** Reasons of ranges, and what is said of a value of a kind, are named in the rows. */
    @ParameterizedTest
    @ValueSource(strings = "intake")
    void everyReasonThatARowNamesIsThere(String room) {
        Set<String> named = found(LITERAL, room);
        named.removeIf(k -> !k.matches("(why|needed)\\..*|.*\\.(is-not|write)"));
        assertThat(named).hasSizeGreaterThan(60);
        assertThat(keys(room)).containsAll(named);
    }
}
