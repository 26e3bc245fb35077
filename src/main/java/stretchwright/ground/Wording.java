package stretchwright.ground;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of one room, in one language: a file with a key for each whole sentence, so that a translator may turn
 * it round. What is filled in is always text already, formatted where it is known what it is.
 */
public final class Wording {
    private static final ResourceBundle.Control ONLY_THAT_LANGUAGE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle sentences;

    /**
     * @param name of the file without its ending, its folders parted by dots
     * @param language of the file: Locale.ROOT for the English one without a language in its name
     */
    public Wording(String name, Locale language) {
        sentences = ResourceBundle.getBundle(name, language, Wording.class.getClassLoader(), ONLY_THAT_LANGUAGE);
    }

    /** Throws where there is no such key, or where the sentence has more or fewer gaps than are filled. */
    public String of(String key, String... filled) {
        MessageFormat sentence = new MessageFormat(sentences.getString(key), Locale.ROOT);
        int gaps = sentence.getFormatsByArgumentIndex().length;
        if (gaps != filled.length) {
            throw new IllegalArgumentException(key + " has " + gaps + " gaps, and " + filled.length + " are filled");
        }
        return sentence.format(filled);
    }
}
