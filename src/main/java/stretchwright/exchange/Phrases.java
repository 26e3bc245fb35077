package stretchwright.exchange;

import java.util.Locale;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.ground.Wording;

/** What this room writes on the pieces, by key: the sentences stand in words.properties, as those of the paper do. */
final class Phrases {
    private static final Wording ENGLISH = new Wording("stretchwright.exchange.words", Locale.ROOT);

    private Phrases() {}

    /** A name of the pattern's. */
    static String said(Said name) {
        return Voice.plain().say(name);
    }

    static String of(String key, String... filled) {
        return ENGLISH.of(key, filled);
    }
}
