package stretchwright.body;

import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** The second sentence of a finding about a measure: what would be right, and the likeliest slip. */
final class Remedy {
    private Remedy() {}

    /** Whether exchanging the value with that of another given measure would make both fit. */
    static Optional<String> exchanged(AtOdds.Odd odd, Known known) {
        for (Measure other : Measure.values()) {
            if (other == odd.measure() || !known.has(other)) {
                continue;
            }
            Known rest = known.without(odd.measure()).without(other);
            double here = offOf(odd.measure(), rest).applyAsDouble(known.mm(other));
            double there = offOf(other, rest).applyAsDouble(odd.mm());
            double before = offOf(other, rest).applyAsDouble(known.mm(other));
            if (Math.abs(here) < 2 && Math.abs(there) < 2 && Math.abs(before) > 3) {
                return Optional.of(String.format(
                        Locale.ROOT,
                        "Exchanged with the %s? The two values would fit the other way round.",
                        other.term()));
            }
        }
        return Optional.empty();
    }

    /** What the known others let expect, and the likeliest slip. */
    static String of(Measure measure, double mm, Known known) {
        JointNormal.Expected expected = known.agreeing().expect(known.logs());
        double middle = Math.exp(expected.logs()[measure.ordinal()]);
        double spread = middle * expected.spreads()[measure.ordinal()];
        String near = known.isEmpty()
                ? String.format(Locale.ROOT, "Usual is %.0f to %.0f mm", middle - 2 * spread, middle + 2 * spread)
                : String.format(
                        Locale.ROOT,
                        "Expected near %.0f mm (%.0f to %.0f)",
                        middle,
                        middle - 2 * spread,
                        middle + 2 * spread);
        return Slip.behind(measure, mm, offOf(measure, known))
                .map(slip -> near + "; " + slip.question())
                .orElse(near + "; taken at another level, or misread?");
    }

    /** Spreads off of any value of the measure, from what is known of the others. */
    static DoubleUnaryOperator offOf(Measure measure, Known others) {
        Known rest = others.without(measure);
        JointNormal.Expected expected = rest.agreeing().expect(rest.logs());
        double middle = expected.logs()[measure.ordinal()];
        double spread = expected.spreads()[measure.ordinal()];
        return mm -> (Math.log(mm) - middle) / spread;
    }

    /** A length for people: whole mm where it is one (but for rounding), else to a tenth. */
    static String plain(double mm) {
        if (!(Math.abs(mm) < 1e9)) {
            return Double.toString(mm);
        }
        return String.format(Locale.ROOT, Math.abs(mm - Math.rint(mm)) < 0.05 ? "%.0f" : "%.1f", mm);
    }
}
