package stretchwright.exchange;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Names for formats that know less than a name may hold: on one line, without control characters, shortened. What is
 * dropped is dropped; nothing in a name can end a text or start an instruction.
 */
final class Plain {
    /** Code points of a name that still reads as a name. */
    static final int LONGEST_NAME = 60;

    /** A DXF text of release 12 has at most 255 characters; room is left for the words before it. */
    private static final int LONGEST_TEXT = 200;

    /** Names of blocks in DXF release 12: capitals, digits, $ _ -, at most 31. */
    private static final int LONGEST_BLOCK = 31;

    private Plain() {}

    /** Printable ASCII: accents are taken off, other letters become question marks. */
    static String ascii(String text) {
        return ascii(text, LONGEST_NAME);
    }

    /** A sentence of the program's own, which is not shortened like a name. */
    static String sentence(String text) {
        return ascii(text, LONGEST_TEXT);
    }

    private static String ascii(String text, int most) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(line(text, most), Normalizer.Form.NFKD)
                .codePoints()
                .filter(c -> !accent(c))
                .forEach(c -> out.append(c >= 0x20 && c < 0x7F ? (char) c : '?'));
        return out.toString();
    }

    /**
     * For a DXF text: ASCII, other letters as \U+ and four hexadecimal digits, those beyond 16 bits as question marks. The reader's own signs
     * (backslash, caret, two percent signs) are taken out first, so that no name can bring one along.
     */
    static String dxf(String text) {
        StringBuilder out = new StringBuilder();
        int[] points = line(text, LONGEST_NAME)
                .replace('\\', '/')
                .replace('^', '\'')
                .replaceAll("%%+", "%")
                .codePoints()
                .toArray();
        for (int c : points) {
            String next =
                    c < 0x7F ? Character.toString(c) : c > 0xFFFF ? "?" : String.format(Locale.ROOT, "\\U+%04X", c);
            if (out.length() + next.length() > LONGEST_TEXT) {
                break;
            }
            out.append(next);
        }
        return out.toString();
    }

    /** A block's name; a number keeps it unique. */
    static String block(String name, int number) {
        String bare = ascii(name).toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9$_-]", "-");
        String end = "-" + number;
        return bare.substring(0, Math.min(bare.length(), LONGEST_BLOCK - end.length())) + end;
    }

    /** "60 %", "12.5 %": the same in every country. */
    static String percent(double share) {
        return number(100 * share) + " %";
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** One line of at most so many code points: white space is a space, what is not seen is left out. */
    private static String line(String text, int most) {
        StringBuilder out = new StringBuilder();
        text.strip()
                .codePoints()
                .limit(20L * most)
                .filter(Plain::seen)
                .forEach(c -> out.appendCodePoint(
                        Character.isWhitespace(c) || Character.isISOControl(c) || Character.isSpaceChar(c) ? ' ' : c));
        String bare = out.toString().strip();
        boolean whole = bare.codePointCount(0, bare.length()) <= most;
        return whole ? bare : bare.substring(0, bare.offsetByCodePoints(0, most - 3)) + "...";
    }

    private static boolean seen(int codePoint) {
        int type = Character.getType(codePoint);
        return type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.UNASSIGNED
                && type != Character.PRIVATE_USE
                && !(codePoint >= 0xFE00 && codePoint <= 0xFE0F);
    }

    private static boolean accent(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }
}
