package stretchwright.ground;

/**
 * The grid on which everything that must be equal is stored, compared and summed: 0.01 mm (decision 0003).
 * Coordinates of 10 m are 10^6 units, so cross products stay near 10^12 and are exact in a long.
 */
public final class Grid {
    /** One unit, in mm. */
    public static final double STEP = 0.01;

    private Grid() {}

    /** The whole number of grid units nearest to a length in mm. */
    public static long units(double mm) {
        return Math.round(mm * 100);
    }

    /** The length in mm of a whole number of grid units. */
    public static double mm(long units) {
        return units / 100.0;
    }

    /** The grid value nearest to a length in mm. */
    public static double snap(double mm) {
        return mm(units(mm));
    }
}
