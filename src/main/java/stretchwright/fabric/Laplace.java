package stretchwright.fabric;

/**
 * Laplace's law for a cylinder: p = T / r = 2 pi T / C (trade-values section 2.2). A cylinder only: flat places get
 * less pressure, bony edges more.
 */
public final class Laplace {
    /** Pascals in one millimetre of mercury. */
    public static final double PASCALS_PER_MMHG = 133.322;

    private Laplace() {}

    /** Pressure in kPa of a tension in N/m round a girth in mm. */
    public static double kilopascals(double tension, double girthMm) {
        return 2 * Math.PI * tension / girthMm;
    }

    /** Tension in N/m that gives a pressure in kPa on a girth in mm. */
    public static double tension(double kilopascals, double girthMm) {
        return kilopascals * girthMm / (2 * Math.PI);
    }

    public static double toMmHg(double kilopascals) {
        return kilopascals * 1000 / PASCALS_PER_MMHG;
    }

    public static double fromMmHg(double mmHg) {
        return mmHg * PASCALS_PER_MMHG / 1000;
    }
}
