package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/**
 * A value as its rule gives it, with the rule and what went in told: a {@link Reason} as soon as it is known of which
 * dimension, and what the drawn piece made of it.
 *
 * @param value mm, or a share
 */
record Ruled(double value, Said rule, List<Input> inputs, Said source) {
    /** Widths given way to the curve by less than this are not worth an input, mm. */
    private static final double SAME = 0.05;

    Ruled {
        inputs = List.copyOf(inputs);
    }

    static Ruled of(double value, Said rule, Said source, Input... inputs) {
        return new Ruled(value, rule, List.of(inputs), source);
    }

    /** By the same rule another value. */
    Ruled with(double other) {
        return new Ruled(other, rule, inputs, source);
    }

    Ruled with(Said other) {
        return new Ruled(value, other, inputs, source);
    }

    Ruled with(Input further) {
        List<Input> all = new ArrayList<>(inputs);
        all.add(further);
        return new Ruled(value, rule, all, source);
    }

    /** What a smooth curve made of it. */
    Ruled evened(double drawn) {
        double change = drawn - value;
        return Math.abs(change) > SAME
                ? with(drawn).with(Tell.said("rule.evened", rule)).with(Inputs.rule(Tell.said("input.evened"), change))
                : with(drawn);
    }

    /** Of a length. */
    Reason reason(Dimension dimension) {
        return new Reason(dimension, value, "mm", rule, inputs, source);
    }

    /** Of a share. */
    Reason percent(Dimension dimension) {
        return new Reason(dimension, 100 * value, "%", rule, inputs, source);
    }
}
