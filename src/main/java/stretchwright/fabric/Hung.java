package stretchwright.fabric;

import java.util.List;
import java.util.OptionalDouble;
import stretchwright.ground.Quantities;

/**
 * What a strip hung with weights told besides its load curves: how it narrows, and how much of its pull is left when it is
 * let back and when it has hung for long. What was not read is empty.
 */
public record Hung(Way across, Way along) {
    public static final Hung NOTHING = new Hung(Way.NOTHING, Way.NOTHING);

    /** Between the marks of an unloaded strip, mm. */
    public static final double MARKS = 100;

    /** Width of an unloaded strip, mm. */
    public static final double WIDTH = 1000 * LoadCurve.STRIP_WIDTH;

    /** The heaviest of the usual weights, g: under it the width is read and the strip left hanging. */
    public static final double FULL_GRAMS = 500;

    /** Pull of the full weight, N/m of the strip's width. */
    public static final double FULL = FULL_GRAMS * Quantities.NEWTONS_PER_GRAM / LoadCurve.STRIP_WIDTH;

    /** Beyond this a cloth would lose area when it is stretched: a read narrowing is taken no larger. */
    public static final double MOST_NARROWING = 0.8;

    /** As it is worn where the pieces are cut crosswise. */
    public Hung turned() {
        return new Hung(along, across);
    }

    /**
     * One direction.
     *
     * @param narrowing share of the width that was lost, by the share of the length that was gained
     * @param wayBack pull on the way back, as a share of the pull on the way out at the same stretch
     * @param relaxed what was left of the pull after half an hour under the full weight
     */
    public record Way(OptionalDouble narrowing, OptionalDouble wayBack, OptionalDouble relaxed) {
        public static final Way NOTHING =
                new Way(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        /** Whether anything was read. */
        public boolean isNothing() {
            return equals(NOTHING);
        }
    }

    /** Of a strip that is so wide, mm, where it is stretched so far. */
    public static double narrowing(double width, double extension) {
        return (1 - width / WIDTH) / extension;
    }

    /** Mean of the readings, as their logarithms have it; never more than the way out, which would be a slip of the ruler. */
    public static double wayBack(LoadCurve out, List<LoadCurve.Reading> back) {
        double logs = 0;
        for (LoadCurve.Reading reading : back) {
            logs += StrictMath.log(reading.tension() / out.tension(reading.extension()));
        }
        return Math.min(1, StrictMath.exp(logs / back.size()));
    }

    /** The curve would ask more of the cloth at the stretch to which it crept than the weight that it carries. */
    public static double relaxed(LoadCurve out, double crept) {
        return Math.min(1, FULL / out.tension(crept));
    }
}
