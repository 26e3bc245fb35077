package stretchwright.exchange;

import java.util.Locale;
import stretchwright.ground.Wording;

/** What this room writes on the pieces, by key: the sentences stand in words.properties, as those of the paper do. */
final class Phrases {
    private static final Wording ENGLISH = new Wording("stretchwright.exchange.words", Locale.ROOT);

    private Phrases() {}

    static String of(String key, String... filled) {
        return ENGLISH.of(key, filled);
    }
}
