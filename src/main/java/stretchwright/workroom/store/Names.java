package stretchwright.workroom.store;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Names and texts as the store takes them. */
public final class Names {
    /** Letters of the longest name. */
    public static final int LONGEST = 200;

    /** Letters of the longest name as it is folded: one letter may unfold into eighteen. */
    private static final int LONGEST_FOLDED = 2 * LONGEST;

    /** Letters of the longest id. */
    static final int LONGEST_ID = 36;

    /** Letters of the longest word for what was done, and for which program made the figures. */
    public static final int LONGEST_WHAT = 20;

    public static final int LONGEST_PROGRAM = 40;

    /** Letters of the longest text: that of the largest make file. */
    public static final int LONGEST_TEXT = 1024 * 1024;

    private Names() {}

    /** A name made from another one, which is shortened where it would be too long. */
    public static String within(String name, int longest, UnaryOperator<String> made) {
        String plain = name;
        while (made.apply(plain).length() > longest && plain.length() > 1) {
            plain = plain.substring(0, plain.offsetByCodePoints(plain.length(), -1))
                    .strip();
        }
        return made.apply(plain);
    }

    /** In which two names are the same: without regard to capitals, widths and spaces. */
    public static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .strip()
                .replaceAll("\\s+", " ");
    }

    /** The words of what is looked for. */
    static List<String> words(String sought) {
        return Stream.of(folded(sought).split(" ")).filter(w -> !w.isEmpty()).toList();
    }

    /** Anywhere in a text, as SQL's LIKE has it, with ! before what means something there. */
    static String anywhere(String word) {
        return "%" + word.replaceAll("([!%_])", "!$1") + "%";
    }

    /** What is wrong with a name. */
    public static Optional<Said> wrongName(String name) {
        if (folded(name).isEmpty()) {
            return Optional.of(Tell.said("name.none"));
        }
        if (name.length() > LONGEST || folded(name).length() > LONGEST_FOLDED) {
            return Optional.of(Tell.said("name.long", Part.count(LONGEST)));
        }
        return name.codePoints().anyMatch(Character::isISOControl) || lonely(name)
                ? Optional.of(Tell.said("name.control"))
                : Optional.empty();
    }

    /** What is wrong with a text. */
    public static Optional<Said> wrongText(String text) {
        if (text.length() > LONGEST_TEXT) {
            return Optional.of(Tell.said("text.long", Part.count(LONGEST_TEXT)));
        }
        return text.indexOf(0) >= 0 || lonely(text) ? Optional.of(Tell.said("text.control")) : Optional.empty();
    }

    /** What is wrong with what is looked for. */
    static Optional<Said> wrongSought(String sought) {
        return sought.length() > LONGEST
                ? Optional.of(Tell.said("sought.long", Part.count(LONGEST)))
                : Optional.empty();
    }

    /** Whether anything can be there under it: no database is asked for what it cannot keep. */
    static boolean isKeepable(String word, int longest) {
        return word.length() <= longest && word.indexOf(0) < 0 && !lonely(word);
    }

    /** What is wrong with the ids of an edit and with what its figures came from. */
    static Optional<Said> wrongIds(Edit edit) {
        return Stream.concat(Stream.of(edit.thing()), edit.links().all().stream())
                .filter(id -> !isKeepable(id, LONGEST_ID))
                .findFirst()
                .map(id -> Tell.said("thing.none", Part.text(id)));
    }

    static boolean isProgram(String program) {
        return isKeepable(program, LONGEST_PROGRAM);
    }

    static boolean isWhat(String what) {
        return isKeepable(what, LONGEST_WHAT);
    }

    /** Half a letter: no database keeps it. */
    private static boolean lonely(String text) {
        return text.codePoints().anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }
}
