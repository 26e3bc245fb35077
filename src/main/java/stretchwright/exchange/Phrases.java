package stretchwright.exchange;

import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/** What this room writes on the pieces, by key: the sentences stand in words.properties, as those of the paper do. */
final class Phrases {
    private Phrases() {}

    /** A name of the pattern's. */
    static String said(Said name) {
        return Voice.plain().say(name);
    }

    static String of(String key, String... filled) {
        return Voice.sentences("exchange").of(key, filled);
    }
}
