package stretchwright.language;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what stands outside of the marks and is no name, unit, number or word of the contract. */
final class Unmarked {
    /** Two words of letters. */
    private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,}[\\s,;:.()/'-]+\\p{L}{2,}.*");

    private static final Pattern FILE = Pattern.compile(
            "[\\w./-]+\\.(yaml|json|csv|pdf|svg|png|dxf|plt|html|md|zip|java)\\b|target/[\\w./-]+|--[\\w-]+");
    private static final Pattern UNIT = Pattern.compile("\\b(mm|cm2?|m|in|yd|kPa|mmHg|N|kN|g|dpi|sq|L|R|A|B)\\b");

    private final Pattern allowed;

    /** @param allowed words that may stand without marks */
    Unmarked(List<String> allowed) {
        String any = allowed.stream()
                .map(String::strip)
                .filter(w -> !w.isEmpty())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(w -> Pattern.quote(w).replace(" ", "\\E\\s+\\Q"))
                .reduce((a, b) -> a + "|" + b)
                .orElse("(?!)");
        this.allowed = Pattern.compile("(?<!\\p{L})(?:" + any + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE);
    }

    /** Line by line; a mark that is never shut hides the rest, and is told. */
    List<String> in(String shown) {
        List<String> out = new ArrayList<>();
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        for (char c : shown.toCharArray()) {
            if (c == PseudoBundles.OPEN) {
                depth++;
                outside.append(depth == 1 ? "\n" : "");
            } else if (c == PseudoBundles.SHUT) {
                depth--;
                outside.append(depth == 0 ? "\n" : "");
            } else if (depth <= 0) {
                outside.append(c);
            }
        }
        if (depth != 0) {
            String line = shown.replaceAll("\\s+", " ");
            out.add("marks open: " + depth + ": " + line.substring(0, Math.min(100, line.length())));
        }
        outside.toString().lines().forEach(line -> {
            String left = allowed.matcher(FILE.matcher(line).replaceAll("|")).replaceAll("|");
            Matcher m = SENTENCE.matcher(UNIT.matcher(left).replaceAll("|"));
            if (m.find()) {
                out.add(m.group().strip());
            }
        });
        return out;
    }
}
