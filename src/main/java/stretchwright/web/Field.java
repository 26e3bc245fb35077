package stretchwright.web;

import java.util.List;

/**
 * One field of the form.
 *
 * @param key the key of the make file, and of the findings about it
 * @param unit shown beside it, and written behind a bare number; {@link #LENGTH} stands for the unit of the make
 * @param options of a choice; empty otherwise
 * @param example what the first page is filled in with; an invented wearer, fabric and boot
 */
public record Field(
        String key, String label, String hint, Kind kind, String unit, List<String> options, String example) {
    public static final String LENGTH = "length";

    public enum Kind {
        TEXT,
        CHOICE,
        /** On or off. */
        CHECK,
        /** Several of the options; the example separates them with "; ". */
        MANY,
        /** Pairs of stretch and force: "20 % = 3.1 N; 40 % = 6.9 N". */
        READINGS,
        /** Several lengths, separated by semicolons. */
        LENGTHS
    }

    public String id() {
        return key.replaceAll("[^a-z]+", "-");
    }

    static Field text(String key, String label, String hint, String unit, String example) {
        return new Field(key, label, hint, Kind.TEXT, unit, List.of(), example);
    }

    static Field length(String key, String label, String hint, String example) {
        return text(key, label, hint, LENGTH, example);
    }

    static Field choice(String key, String label, String hint, List<String> options, String example) {
        return new Field(key, label, hint, Kind.CHOICE, "", options, example);
    }

    static Field check(String key, String label, String hint, boolean on) {
        return new Field(key, label, hint, Kind.CHECK, "", List.of(), on ? "true" : "");
    }
}
