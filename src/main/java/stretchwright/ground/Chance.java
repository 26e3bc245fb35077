package stretchwright.ground;

import org.hipparchus.special.Erf;

/** The normal distribution: the one place where a chance is reckoned. */
public final class Chance {
    /** Between the ends of the range of 8 in 10, in spreads either side of the middle. */
    public static final double EIGHT_IN_TEN = 1.281552;

    /** Of 9 in 10. */
    public static final double NINE_IN_TEN = 1.644854;

    /** Chances further out than this many spreads are 0 or 1. */
    private static final double FAR = 6;

    private Chance() {}

    /** That a value about the middle lies below the limit. */
    public static double below(double limit, double middle, double spread) {
        double z = (limit - middle) / spread;
        return Math.abs(z) > FAR ? (z > 0 ? 1 : 0) : Erf.erfc(-z / Math.sqrt(2)) / 2;
    }

    /** That a value whose logarithm is spread about that of the middle lies above the limit; never where there is none. */
    public static double above(double limit, double middle, double logSpread) {
        return middle > 0 ? below(StrictMath.log(middle), StrictMath.log(limit), logSpread) : 0;
    }
}
