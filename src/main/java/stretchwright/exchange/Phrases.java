package stretchwright.exchange;

import stretchwright.ground.Voice;

/** What this room writes on the pieces, by key: the sentences stand in words.properties, as those of the paper do. */
final class Phrases {
    private Phrases() {}

    static String of(String key, String... filled) {
        return Voice.sentences("exchange").of(key, filled);
    }
}
