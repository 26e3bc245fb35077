package stretchwright.print.kit;

import java.util.Locale;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.ground.Wording;

/**
 * What this room writes on paper, by key: the sentences stand in words.properties.
 *
 * <p>English is the only language so far. A further one is a file words_xx.properties beside it (xx: its code), with every
 * key, and the choice of it is made here; where each maker is to choose, a field of {@link Job} comes in beside the key.
 * It is told to readers too: PdfFile and Checklist say "en", and checklist.js has four words of its own.
 */
public final class Phrases {
    private static final Wording ENGLISH = new Wording("stretchwright.print.words", Locale.ROOT);

    private Phrases() {}

    /** A name of the pattern's, or another term without a length in it. */
    public static String said(Said term) {
        return Voice.plain().say(term);
    }

    /** @param filled in for {0}, {1}, ...: text, numbers as {@link Amounts} writes them */
    public static String of(String key, String... filled) {
        return ENGLISH.of(key, filled);
    }
}
