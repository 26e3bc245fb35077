package stretchwright.ground;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounding for the report and plain writing for messages; always the same text for the same value. */
public final class Numbers {
    private Numbers() {}

    /** Rounded to a number of decimals, without trailing zeros and without a negative zero. */
    public static BigDecimal rounded(double value, int decimals) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        BigDecimal short_ = exact.stripTrailingZeros();
        return short_.scale() < 0 ? short_.setScale(0) : short_;
    }

    /** Lengths, areas, minutes, degrees: two decimals (0.01 mm is the grid of the pattern). */
    public static BigDecimal mm(double value) {
        return rounded(value, 2);
    }

    /** Shares: 0.0001 is a hundredth of a percent. */
    public static BigDecimal share(double value) {
        return rounded(value, 4);
    }

    /** For people: at most two decimals. */
    public static String plain(double value) {
        return rounded(value, 2).toPlainString();
    }
}
