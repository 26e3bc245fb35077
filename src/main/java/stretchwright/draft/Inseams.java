package stretchwright.draft;

import java.util.OptionalDouble;

/** Makes the two inseams of a leg equally long. */
final class Inseams {
    private static final double MOST_DROP = 60;

    /** Of the height down to the next level, so that the curve between stays one. */
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
