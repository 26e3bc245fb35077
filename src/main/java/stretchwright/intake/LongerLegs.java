package stretchwright.intake;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Readings;
import stretchwright.body.Side;

/**
 * Measures as of a wearer with longer legs: what is measured from the crotch up moves by the whole, the knee by half, as
 * patterns are lengthened at a line above and a line below the knee (common practice, no source).
 */
final class LongerLegs {
    private static final Set<Measure> WHOLE =
            EnumSet.of(Measure.STATURE, Measure.WAIST_HEIGHT, Measure.HIP_HEIGHT, Measure.CROTCH_HEIGHT);

    private LongerLegs() {}

    /** Empty where the crotch height was not measured: then nothing says how long the leg is. */
    static Optional<Measured> of(Measured m, double mm) {
        if (!m.means().containsKey(Measure.CROTCH_HEIGHT)) {
            return Optional.empty();
        }
        Map<Side, Map<Measure, Readings>> sides = new EnumMap<>(Side.class);
        m.sides().forEach((side, readings) -> sides.put(side, longer(readings, mm)));
        return Optional.of(new Measured(
                m.figure(), m.age(), m.stance().higher(mm), longer(m.whole(), mm), sides, m.hard(), m.poseLengths()));
    }

    private static Map<Measure, Readings> longer(Map<Measure, Readings> measured, double mm) {
        Map<Measure, Readings> out = new EnumMap<>(Measure.class);
        measured.forEach((measure, readings) -> {
            double by = WHOLE.contains(measure) ? mm : measure == Measure.KNEE_HEIGHT ? mm / 2 : 0;
            out.put(
                    measure,
                    new Readings(readings.mm().stream().map(r -> r + by).toList()));
        });
        return out;
    }
}
