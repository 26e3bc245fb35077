package stretchwright.body;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/** The second sentence of a finding about a measure: what would be right, and the likeliest slip. */
final class Remedy {
    private Remedy() {}

    /** Whether exchanging the value with that of another given measure would make both fit. */
    static Optional<Said> exchanged(AtOdds.Odd odd, Known known) {
        for (Measure other : Measure.values()) {
            if (other == odd.measure() || !known.has(other)) {
                continue;
            }
            Known rest = known.without(odd.measure()).without(other);
            double here = offOf(odd.measure(), rest).applyAsDouble(known.mm(other));
            double there = offOf(other, rest).applyAsDouble(odd.mm());
            double before = offOf(other, rest).applyAsDouble(known.mm(other));
            if (Math.abs(here) < 2 && Math.abs(there) < 2 && Math.abs(before) > 3) {
                return Optional.of(Tell.said("remedy.exchanged", other.said()));
            }
        }
        return Optional.empty();
    }

    /** What the known others let expect, and the likeliest slip in the unit the value was written in. */
    static Said of(Measure measure, double mm, Unit unit, Known known) {
        JointNormal.Expected expected = known.agreeing().expect(known.logs());
        double middle = Math.exp(expected.logs()[measure.ordinal()]);
        Part range = Tell.range(middle, middle * expected.spreads()[measure.ordinal()]);
        Said slip = Slip.behind(measure, mm, unit, offOf(measure, known))
                .map(Slip::question)
                .orElse(Tell.said("slip.other"));
        return known.isEmpty()
                ? Tell.said("remedy.usual", range, slip)
                : Tell.said("remedy.expected", Part.length(middle), range, slip);
    }

    /** Spreads off of any value of the measure, from what is known of the others. */
    static DoubleUnaryOperator offOf(Measure measure, Known others) {
        Known rest = others.without(measure);
        JointNormal.Expected expected = rest.agreeing().expect(rest.logs());
        double middle = expected.logs()[measure.ordinal()];
        double spread = expected.spreads()[measure.ordinal()];
        return mm -> (Math.log(mm) - middle) / spread;
    }
}
