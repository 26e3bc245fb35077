package stretchwright.draft;

import java.util.OptionalDouble;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold.Bound;

/**
 * How one level of one leg, or the hip, is to be held.
 *
 * @param height of the level on the body, mm
 * @param girth mm
 * @param taken the share taken off it: width = girth x (1 - share) + ease
 * @param wanted pressure, kPa
 * @param bound what decided
 * @param most strain that must not be passed for the deepest pose and for comfort
 * @param keeps which of the two that is
 * @param ease the wearer's own, mm
 */
record Held(
        double height,
        double girth,
        Ruled taken,
        OptionalDouble wanted,
        Bound bound,
        double most,
        Bound keeps,
        double ease) {
    /** A width changed by more than this share of itself was decided by something else than the plan. */
    static final double SAME = 0.0005;

    /** Where neither pose nor comfort is asked: a hard place, a fixed share. */
    static Held unbounded(double height, double girth, Ruled taken, OptionalDouble wanted, Bound bound, double ease) {
        return new Held(height, girth, taken, wanted, bound, Double.POSITIVE_INFINITY, Bound.NONE, ease);
    }

    Held lessened(double less, Bound why) {
        return new Held(height, girth, taken.with(less), wanted, why, most, keeps, ease);
    }

    double reduction() {
        return taken.value();
    }

    double strain() {
        return reduction() / (1 - reduction());
    }

    double width() {
        return girth * (1 - reduction()) + ease;
    }

    /** The narrowest width that pose and comfort allow, mm. */
    double least() {
        return girth / (1 + most);
    }

    /** The share taken off, with what bounded it. */
    Ruled bounded() {
        return bound == Bound.NONE || bound == Bound.HARD
                ? taken
                : taken.with(Tell.said("rule.bounded", taken.rule(), bound.said()));
    }

    /**
     * What decided the width once the pattern is drawn: the plan, or the curve, or what must pass.
     *
     * @param seam whether the seam stretches less than the cloth
     */
    Bound decided(Level drawn, boolean seam) {
        double change = drawn.width() / width() - 1;
        if (Math.abs(change) <= SAME || bound != Bound.NONE) {
            return bound;
        }
        if (change > 0 && drawn.width() <= least() * (1 + SAME)) {
            return keeps;
        }
        if (drawn.name() != Level.Name.ANKLE) {
            return Bound.SHAPE;
        }
        return seam ? Bound.SEAM : Bound.PASSING;
    }
}
