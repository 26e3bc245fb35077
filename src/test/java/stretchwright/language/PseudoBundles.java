package stretchwright.language;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A language that nobody speaks: every sentence of every room as it is in English, between two marks. What is shown without
 * marks was not taken from a bundle.
 */
final class PseudoBundles {
    static final String LANGUAGE = "qps";
    static final char OPEN = '\u00ab';
    static final char SHUT = '\u00bb';

    private static final String FILE = "words.properties";
    private static final Path ENGLISH = Path.of("src/main/resources");

    /** What is told of a measure; the rest of it are names and numbers. */
    private static final Pattern GUIDED = Pattern.compile("(?m)^((?:how|wrong|alone): )(.*)$");

    private PseudoBundles() {}

    /** Written below a folder that is to stand first in the class path. */
    static void write(Path folder) throws IOException {
        for (Path english : files()) {
            Path pseudo =
                    folder.resolve(ENGLISH.relativize(english)).resolveSibling(FILE.replace(".", "_" + LANGUAGE + "."));
            Files.createDirectories(pseudo.getParent());
            Files.write(
                    pseudo,
                    Files.readAllLines(english).stream()
                            .map(PseudoBundles::marked)
                            .toList());
        }
        for (String guide : List.of("body/guide", "body/guide-start", "intake/boot-guide", "intake/boot-guide-start")) {
            Path english = ENGLISH.resolve("stretchwright/" + guide + ".txt");
            String text = Files.readString(english);
            Files.writeString(
                    folder.resolve("stretchwright/" + guide + "_" + LANGUAGE + ".txt"),
                    guide.endsWith("guide")
                            ? GUIDED.matcher(text).replaceAll("$1" + OPEN + "$2" + SHUT)
                            : OPEN + text + SHUT);
        }
    }

    static List<Path> files() {
        try (Stream<Path> all = Files.walk(ENGLISH)) {
            return all.filter(p -> p.endsWith(FILE)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A comma between two words is no sentence. */
    private static String marked(String line) {
        String[] parts = line.split(" = ", 2);
        boolean sentence = !line.startsWith("#")
                && parts.length == 2
                && parts[1].replaceAll("\\\\u\\p{XDigit}{4}|%n|\\{\\d}", "").matches(".*\\p{L}.*");
        return sentence ? parts[0] + " = " + OPEN + parts[1] + SHUT : line;
    }
}
