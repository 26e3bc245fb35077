package stretchwright.cli;

/**
 * Text as it may be shown: a character that would steer the terminal, or turn the order of what stands beside it, is
 * written as its code, such as \\u001B. Inside JSON that is the same character.
 */
final class Visible {
    private Visible() {}

    /** Text of several lines; its line breaks and tabs stay. */
    static String text(CharSequence text) {
        StringBuilder shown = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\t' || ends || !steers(c)) {
                shown.append(c);
            } else {
                shown.append(String.format("\\u%04X", (int) c));
            }
        }
        return shown.toString();
    }

    /** One line, and no more than one. */
    static String line(String line) {
        return text(line.replace("\r", "\\u000D").replace("\n", "\\u000A"));
    }

    /** Control characters of both sets, line and paragraph separators, marks of the writing direction. */
    private static boolean steers(char c) {
        return Character.isISOControl(c)
                || c == '\u061C'
                || c == '\u200E'
                || c == '\u200F'
                || c >= '\u2028' && c <= '\u202E'
                || c >= '\u2066' && c <= '\u2069';
    }
}
