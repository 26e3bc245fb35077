package stretchwright.web.things;

import java.util.List;

/**
 * A place to fill in.
 *
 * @param unit that stands beside it; may be empty
 */
public record Blank(String name, String label, String value, String unit, Input input, List<Choice> choices) {
    public Blank {
        choices = List.copyOf(choices);
    }

    /** How it is filled in. */
    public enum Input {
        NUMBER,
        TEXT,
        DYE,
        TICK,
        PICK
    }

    /** A word to choose. */
    public record Choice(String value, String words) {}

    static Blank number(String name, String label, String value, String unit) {
        return new Blank(name, label, value, unit, Input.NUMBER, List.of());
    }

    static Blank text(String name, String label, String value) {
        return new Blank(name, label, value, "", Input.TEXT, List.of());
    }

    /** @param dye as "#4a2a46" */
    static Blank dye(String name, String label, String dye) {
        return new Blank(name, label, dye, "", Input.DYE, List.of());
    }

    static Blank tick(String name, String label, boolean ticked) {
        return new Blank(name, label, ticked ? "true" : "", "", Input.TICK, List.of());
    }

    static Blank pick(String name, String label, String value, List<Choice> choices) {
        return new Blank(name, label, value, "", Input.PICK, choices);
    }

    Blank with(String typed) {
        return new Blank(name, label, typed, unit, input, choices);
    }

    public String id() {
        return name.replaceAll("[^a-z0-9]+", "-");
    }
}
