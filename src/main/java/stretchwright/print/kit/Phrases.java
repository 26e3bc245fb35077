package stretchwright.print.kit;

import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/** What this room writes on paper, by key, in the program's language: the sentences stand in words.properties. */
public final class Phrases {
    private Phrases() {}

    /** A name of the pattern's, or another term without a length in it. */
    public static String said(Said term) {
        return Voice.plain().say(term);
    }

    /** @param filled in for {0}, {1}, ...: text, numbers as {@link Amounts} writes them */
    public static String of(String key, String... filled) {
        return Voice.sentences("print").of(key, filled);
    }
}
