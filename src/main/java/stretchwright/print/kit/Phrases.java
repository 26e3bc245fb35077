package stretchwright.print.kit;

import stretchwright.ground.Voice;

/** What this room writes on paper, by key, in the program's language: the sentences stand in words.properties. */
public final class Phrases {
    private Phrases() {}

    /** @param filled in for {0}, {1}, ...: text, numbers as {@link Amounts} writes them */
    public static String of(String key, String... filled) {
        return Voice.sentences("print").of(key, filled);
    }
}
