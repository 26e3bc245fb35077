package stretchwright.pattern;

import java.util.List;

/**
 * Why one dimension of one piece is what it is.
 *
 * @param dimension as asked for: piece and what is measured on it, such as "leg: knee width"
 * @param value as the rule gives it from the inputs
 * @param unit "mm", or "%" for a reduction
 * @param rule in plain words with its formula
 * @param inputs what went in
 * @param source where the rule comes from: a section of docs/maths, a published source, or "common practice, no source"
 */
public record Reason(String dimension, double value, String unit, String rule, List<Input> inputs, String source) {
    /**
     * @param name such as "knee girth"
     * @param value in the unit
     * @param unit "mm" or "%" or "" for a plain number
     * @param from where it comes from: "measured", "estimated", "fabric", "boot", "style", "rule", or another
     *     dimension's name, whose own reason goes on from there
     */
    public record Input(String name, double value, String unit, String from) {}

    public Reason {
        inputs = List.copyOf(inputs);
    }

    /** Of a length. */
    public Reason(String dimension, double mm, String rule, List<Input> inputs, String source) {
        this(dimension, mm, "mm", rule, inputs, source);
    }

    public double mm() {
        return value;
    }
}
