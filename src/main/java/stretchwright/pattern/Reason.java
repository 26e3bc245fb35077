package stretchwright.pattern;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Said;

/**
 * Why one dimension is what it is.
 *
 * @param value as the rule gives it from the inputs
 * @param unit "mm", or "%" for a reduction
 * @param rule in plain words with its formula
 * @param inputs what went in
 * @param source where the rule comes from: a section of docs/maths, a published source, or common practice
 */
public record Reason(Dimension dimension, double value, String unit, Said rule, List<Input> inputs, Said source) {
    /**
     * @param name such as "knee girth"
     * @param value in the unit
     * @param unit "mm", "%", "mmHg" or "" for a plain number
     * @param from where it comes from
     */
    public record Input(Said name, double value, String unit, From from) {}

    /** Where an input comes from: the end of a chain, or another dimension, whose own reason goes on from there. */
    public sealed interface From permits Origin, Dimension {
        /** As written in the report. */
        String word();

        Said said();
    }

    /** Where chains of reasons end. */
    public enum Origin implements From {
        MEASURED(Tell.said("origin.measured")),
        ESTIMATED(Tell.said("origin.estimated")),
        FABRIC(Tell.said("origin.fabric")),
        BOOT(Tell.said("origin.boot")),
        STYLE(Tell.said("origin.style")),
        RULE(Tell.said("origin.rule"));

        private final Said said;

        Origin(Said said) {
            this.said = said;
        }

        @Override
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        @Override
        public Said said() {
            return said;
        }
    }

    public Reason {
        inputs = List.copyOf(inputs);
    }

    /** The same rule for another dimension. */
    public Reason of(Dimension other) {
        return new Reason(other, value, unit, rule, inputs, source);
    }

    public double mm() {
        return value;
    }
}
