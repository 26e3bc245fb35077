package stretchwright.ground;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Root finding inside a bracket that is checked, never assumed. */
public final class Roots {
    /** Far below the 0.01 mm grid. */
    private static final double ACCURACY = 1e-7;

    private static final int STEPS = 24;

    private Roots() {}

    /**
     * The highest root between low and high: the bracket is looked for from the top down, in equal steps, so that a
     * function that misbehaves far below does not hide it.
     */
    public static OptionalDouble highest(DoubleUnaryOperator f, double low, double high) {
        double upper = high;
        for (int i = 1; i <= STEPS && upper > low; i++) {
            double lower = high + (low - high) * i / STEPS;
            OptionalDouble root = between(f, lower, upper);
            if (root.isPresent()) {
                return root;
            }
            upper = lower;
        }
        return OptionalDouble.empty();
    }

    /** The root between low and high; empty where the function has the same sign at both. */
    public static OptionalDouble between(DoubleUnaryOperator f, double low, double high) {
        return between(f, low, high, ACCURACY);
    }

    /** The same no nearer than this. */
    public static OptionalDouble between(DoubleUnaryOperator f, double low, double high, double accuracy) {
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        if (atLow == 0) {
            return OptionalDouble.of(low);
        }
        if (atHigh == 0) {
            return OptionalDouble.of(high);
        }
        if ((atLow > 0) == (atHigh > 0)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                new BracketingNthOrderBrentSolver(accuracy, 5).solve(200, f::applyAsDouble, low, high));
    }
}
