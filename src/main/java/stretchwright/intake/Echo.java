package stretchwright.intake;

/** What a file holds, said back in a finding: on one line and never at length. */
public final class Echo {
    /** The longest known key has 19 letters. */
    private static final int LONGEST_KEY = 40;

    private static final int LONGEST_VALUE = 40;

    private Echo() {}

    public static String quoted(String text) {
        return "\"" + shortened(text, LONGEST_VALUE) + "\"";
    }

    /** A key's full path; of a key that nobody would write only the beginning. */
    static String path(String outer, String key) {
        String word = shortened(key, LONGEST_KEY);
        return outer.isEmpty() ? word : outer + "." + word;
    }

    public static String shortened(String text, int most) {
        String line = text.replaceAll("\\s+", " ");
        if (line.length() <= most) {
            return line;
        }
        int end = Character.isHighSurrogate(line.charAt(most - 1)) ? most - 1 : most;
        return line.substring(0, end) + "...";
    }

    /** Control characters, and halves of a surrogate pair, which no file can carry. */
    static boolean isNoLetter(int codePoint) {
        return Character.isISOControl(codePoint)
                || (codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE);
    }
}
