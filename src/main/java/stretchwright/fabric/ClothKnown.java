package stretchwright.fabric;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * How surely pressures can be told from what was tested of a cloth, and what the next reading would buy: the range of 8 in 10 as
 * its upper end over its lower one, by the spreads with which the fit check judges ({@link CurveSpread}).
 *
 * @param weights under which a strip across was read: none, one, or more
 * @param first extension at the first of them, as a share
 * @param along whether a strip along was hung
 * @param full extension across that is to be expected under 500 g
 * @param light the same under 100 g
 */
public record ClothKnown(
        int weights,
        double first,
        boolean narrowing,
        boolean along,
        boolean wayBack,
        boolean relaxed,
        double full,
        double light) {
    private static final double LIGHT = Hung.FULL / 5;
    private static final int THREE = 3;

    /** A reading that narrows the range by less is not asked for: it would be told with the same digits. */
    private static final double WORTH = 0.1;

    /** A cloth of which no strip was hung, of the usual stretch: for the cards. */
    public static final ClothKnown NOTHING = of(LoadCurve.assumed(0.6), CurveSpread.of(LoadCurve.assumed(0.6)), false);

    public enum Reading {
        FULL_WEIGHT(Tell.said("reading.full-weight")),
        THREE_WEIGHTS(Tell.said("reading.three-weights")),
        WIDTH(Tell.said("reading.width")),
        ALONG(Tell.said("reading.along")),
        WAY_BACK(Tell.said("reading.way-back")),
        HALF_AN_HOUR(Tell.said("reading.half-an-hour"));

        private final Said said;

        Reading(Said said) {
            this.said = said;
        }

        Said said() {
            return said;
        }
    }

    public static ClothKnown of(Fabric fabric) {
        Fabric.Test test = fabric.test();
        return of(test.loadAcross(), CurveSpread.of(test), !test.loadAlong().isAssumed());
    }

    private static ClothKnown of(LoadCurve across, CurveSpread cloth, boolean stripAlong) {
        return new ClothKnown(
                cloth.readings(),
                cloth.first(),
                cloth.narrowing(),
                stripAlong,
                cloth.wayBack(),
                cloth.relaxed(),
                across.extension(Hung.FULL),
                across.extension(LIGHT));
    }

    /** Whether a reading is there. */
    public boolean has(Reading reading) {
        return switch (reading) {
            case FULL_WEIGHT -> weights > 0;
            case THREE_WEIGHTS -> weights > 1;
            case WIDTH -> narrowing;
            case ALONG -> along;
            case WAY_BACK -> wayBack;
            case HALF_AN_HOUR -> relaxed;
        };
    }

    /** Upper end of the range of 8 in 10 over its lower one, of a pressure. */
    public double highOverLow() {
        return PressureSpread.highOverLow(CurveSpread.of(weights, first, narrowing, along, wayBack, relaxed));
    }

    /** The reading that buys most of those that are not there. Who hangs a strip hangs the three weights. */
    public Optional<Reading> next() {
        return Arrays.stream(Reading.values())
                .filter(r -> r != Reading.FULL_WEIGHT && !has(r))
                .filter(r -> with(r).highOverLow() < highOverLow() - WORTH)
                .min(Comparator.comparingDouble(r -> with(r).highOverLow()));
    }

    /** With that reading too. */
    public ClothKnown with(Reading reading) {
        if (has(reading)) {
            return this;
        }
        return switch (reading) {
            case FULL_WEIGHT -> new ClothKnown(1, full, narrowing, along, wayBack, relaxed, full, light);
            case THREE_WEIGHTS -> new ClothKnown(THREE, light, narrowing, along, wayBack, relaxed, full, light);
            case WIDTH -> new ClothKnown(weights, first, true, along, wayBack, relaxed, full, light);
            case ALONG -> new ClothKnown(weights, first, narrowing, true, wayBack, relaxed, full, light);
            case WAY_BACK -> new ClothKnown(weights, first, narrowing, along, true, relaxed, full, light);
            case HALF_AN_HOUR -> new ClothKnown(weights, first, narrowing, along, wayBack, true, full, light);
        };
    }

    /** How wide the range is now, and what the next reading would make of it. */
    public Said said() {
        Part now = Part.fixed(highOverLow(), 1);
        return next().map(reading -> Tell.said(
                        "known.next",
                        now,
                        reading.said(),
                        Part.fixed(with(reading).highOverLow(), 1)))
                .orElseGet(() -> Tell.said("known.all", now));
    }
}
