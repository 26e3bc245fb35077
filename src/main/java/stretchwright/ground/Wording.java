package stretchwright.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sentences of one room, in one language: a file with a key for each whole sentence, so that a translator may turn
 * it round. What is filled in is always text already, formatted where it is known what it is. Gaps and quotes are written
 * as Java's MessageFormat has them: {0}, and '' for one '.
 */
public final class Wording {
    /** No sentence of the language that the computer happens to speak. */
    public static final ResourceBundle.Control ONLY_THAT_LANGUAGE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle sentences;
    private final Map<String, Sentence> read = new ConcurrentHashMap<>();

    /** What stands between the gaps, one more than there are, and what goes into each. */
    private record Sentence(List<String> words, List<Integer> filled) {
        int gaps() {
            return filled.stream().mapToInt(i -> i + 1).max().orElse(0);
        }
    }

    /**
     * @param name of the file without its ending, its folders parted by dots
     * @param language of the file: Locale.ROOT for the English one without a language in its name
     */
    public Wording(String name, Locale language) {
        sentences = ResourceBundle.getBundle(name, language, Wording.class.getClassLoader(), ONLY_THAT_LANGUAGE);
    }

    /** Throws where there is no such key, or where the sentence has more or fewer gaps than are filled. */
    public String of(String key, String... filled) {
        Sentence sentence = read.computeIfAbsent(key, k -> sentence(sentences.getString(k)));
        if (sentence.gaps() != filled.length) {
            throw new IllegalArgumentException(
                    key + " has " + sentence.gaps() + " gaps, and " + filled.length + " are filled");
        }
        StringBuilder out = new StringBuilder(sentence.words.get(0));
        for (int i = 0; i < sentence.filled.size(); i++) {
            out.append(filled[sentence.filled.get(i)]).append(sentence.words.get(i + 1));
        }
        return out.toString();
    }

    private static Sentence sentence(String written) {
        List<String> words = new ArrayList<>();
        List<Integer> filled = new ArrayList<>();
        StringBuilder now = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c == '\'') {
                boolean twice = written.startsWith("''", i);
                now.append(twice ? "'" : "");
                quoted ^= !twice;
                i += twice ? 1 : 0;
            } else if (c == '{' && !quoted) {
                int end = written.indexOf('}', i);
                filled.add(Integer.valueOf(written.substring(i + 1, end)));
                words.add(now.toString());
                now.setLength(0);
                i = end;
            } else {
                now.append(c);
            }
        }
        words.add(now.toString());
        return new Sentence(words, filled);
    }
}
