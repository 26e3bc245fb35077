package stretchwright.intake;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to a mistyped one: edit distance after Levenshtein, neighbours swapped count as one edit. Never its opposite. */
public final class Nearest {
    /** Of so few letters two others are another word: "gap" is not "way". */
    private static final int SHORT = 5;

    private Nearest() {}

    /** Empty where nothing is near: more than a third of the letters would have to change. */
    public static Optional<String> to(String word, Collection<String> known) {
        String plain = plain(word);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String candidate : known) {
            if (Opposites.are(plain, candidate)) {
                continue;
            }
            int distance = distance(plain, plain(candidate));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        int tolerated = plain.length() < SHORT ? 1 : Math.max(2, plain.length() / 3);
        return least <= tolerated && least < plain.length() ? Optional.ofNullable(best) : Optional.empty();
    }

    private static String plain(String word) {
        String lower =
                word.toLowerCase(Locale.ROOT).replaceAll("[_\\-\\s]+", " ").strip();
        return lower.length() > 60 ? lower.substring(0, 60) : lower;
    }

    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
