package stretchwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pass phrases that are made up: words of a list of our own, easy to say across a table and to type on a phone. */
final class PhraseWords {
    /** Of 256 words each: 40 bits, of which the few tries a minute that the page lets through find none in ten thousand years. */
    static final int WORDS = 5;

    private static final String LIST = "/stretchwright/cli/phrase-words.txt";

    private PhraseWords() {}

    static String some() {
        return some(new SecureRandom());
    }

    static String some(Random random) {
        List<String> list = list();
        return Stream.generate(() -> list.get(random.nextInt(list.size())))
                .limit(WORDS)
                .collect(Collectors.joining(" "));
    }

    static List<String> list() {
        try (InputStream in = Objects.requireNonNull(PhraseWords.class.getResourceAsStream(LIST))) {
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
