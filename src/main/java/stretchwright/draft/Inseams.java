package stretchwright.draft;

import java.util.OptionalDouble;

/** Makes the two inseams of a leg equally long. */
final class Inseams {
    /**
     * The back crotch point is lowered by at most this, mm: the survey's women of 1988 need 3 to 15
     * (docs/maths/draft.md, "The leg"), a stout body in a short leg some more (no source).
     */
    private static final double MOST_DROP = 60;

    /** And by at most this share of the height down to the next level, so that the curve between stays one (no source). */
    private static final double MOST_SHARE = 0.7;

    private Inseams() {}

    /** How far the back crotch point must be lowered so that the back inseam is as long as the front one, mm. */
    static double backDrop(LegCurves curves, double frontLength) {
        OptionalDouble drop = Roots.between(
                d -> curves.inseam(1, d).length() - frontLength,
                0,
                Math.min(MOST_DROP, MOST_SHARE * curves.firstInterval()));
        return drop.orElseThrow(() -> new IllegalStateException(
                "the back inseam cannot be brought to " + frontLength + " mm by lowering its end"));
    }
}
