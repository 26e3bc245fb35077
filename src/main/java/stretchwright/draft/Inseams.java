package stretchwright.draft;

import java.util.OptionalDouble;

/** Makes the two inseams of a leg equally long. */
final class Inseams {
    /**
     * The back crotch point is lowered by at most this, mm. The survey's women of 1988 need 3 to 15
     * (docs/maths/draft.md, "The leg"); of wearers whose hip is far rounder than their thighs are long the back extension is
     * wide and its inseam steep (the most found in the surveys, widened; no source).
     */
    private static final double MOST_DROP = 120;

    /** And by at most this share of the height down to the next level, so that the curve between stays one (no source). */
    private static final double MOST_SHARE = 0.7;

    private Inseams() {}

    /**
     * How far the back crotch point must be lowered so that the back inseam is as long as the front one, mm; empty where
     * no bearable lowering makes it so.
     */
    static OptionalDouble backDrop(LegCurves curves, double frontLength) {
        return Roots.between(d -> curves.inseam(1, d).length() - frontLength, 0, most(curves));
    }

    /** The largest bearable lowering, mm. */
    static double most(LegCurves curves) {
        return Math.min(MOST_DROP, MOST_SHARE * curves.firstInterval());
    }
}
