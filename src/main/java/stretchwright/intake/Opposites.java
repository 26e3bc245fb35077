package stretchwright.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Words that are never offered for each other, however alike they are written: who says that the legs are too long does not
 * mean too short.
 */
public final class Opposites {
    private static final List<List<Set<String>>> PAIRS = List.of(
            List.of(Set.of("long", "longer"), Set.of("short", "shorter")),
            List.of(Set.of("high", "higher"), Set.of("low", "lower")),
            List.of(Set.of("tight", "tighter", "narrow"), Set.of("loose", "looser", "wide", "wider", "slack", "baggy")),
            List.of(Set.of("front"), Set.of("back", "behind")),
            List.of(Set.of("up"), Set.of("down")),
            List.of(Set.of("left"), Set.of("right")),
            List.of(Set.of("above"), Set.of("below", "under")),
            List.of(Set.of("across"), Set.of("along")),
            List.of(Set.of("firm"), Set.of("light")));

    /** A shorter word is not taken for a mistyped one: too many others are one letter off. */
    private static final int LETTERS = 4;

    private Opposites() {}

    /** Whether one says the opposite of the other. */
    public static boolean are(String a, String b) {
        List<String> left = words(a);
        List<String> right = words(b);
        return PAIRS.stream()
                .anyMatch(pair ->
                        says(left, right, pair.get(0), pair.get(1)) || says(left, right, pair.get(1), pair.get(0)));
    }

    /** Whether both say how something is, and nothing the same: too loose is not too high. */
    public static boolean differ(String a, String b) {
        List<Set<String>> left = senses(words(a));
        List<Set<String>> right = senses(words(b));
        return !left.isEmpty() && !right.isEmpty() && left.stream().noneMatch(right::contains);
    }

    private static List<Set<String>> senses(List<String> words) {
        return PAIRS.stream()
                .flatMap(List::stream)
                .filter(sense -> has(words, sense))
                .toList();
    }

    /** In small letters. */
    public static List<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    /** The same word, or one letter mistyped. */
    public static boolean same(String a, String b) {
        return a.equals(b) || (Math.max(a.length(), b.length()) >= LETTERS && Nearest.distance(a, b) <= 1);
    }

    private static boolean says(List<String> a, List<String> b, Set<String> one, Set<String> other) {
        return has(a, one) && !has(a, other) && has(b, other) && !has(b, one);
    }

    private static boolean has(List<String> words, Set<String> sense) {
        return words.stream().anyMatch(w -> sense.stream().anyMatch(s -> same(w, s)));
    }
}
