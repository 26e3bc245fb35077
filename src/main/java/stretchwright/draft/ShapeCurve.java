package stretchwright.draft;

import java.util.OptionalDouble;

/**
 * A smooth curve through given heights that bends only where the data bend.
 *
 * <p>Between two nodes: where the slopes lie on both sides of the chord's (the data are convex or concave there) the
 * rational cubic of Delbourgo and Gregory (IMA J. Numer. Anal. 5, 1985), which has no inflection; elsewhere the cubic
 * of Hermite, which has at most one. Slopes agree at the nodes, so the curve is smooth.
 */
final class ShapeCurve {
    /** For differences, mm: what is left out is of its square. */
    private static final double STEP = 0.01;

    /** The slopes settle within a few. */
    private static final int SWEEPS = 16;

    /** Chords whose slopes differ by less are one line. */
    private static final double LEAST_JUMP = 1e-6;

    /** A slope keeps this share of the jump off both chords', so that no piece is bent at one end only. */
    private static final double ROOM = 0.02;

    private final double[] y;
    private final double[] value;
    private final double[] slope;

    /**
     * @param y strictly falling
     * @param slope derivative by y at each node
     */
    ShapeCurve(double[] y, double[] value, double[] slope) {
        this.y = y.clone();
        this.value = value.clone();
        this.slope = slope.clone();
        for (int i = 1; i < y.length; i++) {
            if (!(y[i] < y[i - 1])) {
                throw new IllegalArgumentException("heights must fall: " + y[i - 1] + " then " + y[i]);
            }
        }
    }

    /** Slopes by the three-point rule, which always lie between the neighbouring chords'; chords' own at the ends. */
    static double[] slopes(double[] y, double[] value) {
        int n = y.length;
        double[] chord = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            chord[i] = (value[i + 1] - value[i]) / (y[i + 1] - y[i]);
        }
        double[] d = new double[n];
        if (n == 2) {
            return new double[] {chord[0], chord[0]};
        }
        for (int i = 1; i < n - 1; i++) {
            double above = y[i - 1] - y[i];
            double below = y[i] - y[i + 1];
            d[i] = (below * chord[i - 1] + above * chord[i]) / (above + below);
        }
        d[0] = 2 * chord[0] - d[1];
        d[n - 1] = 2 * chord[n - 2] - d[n - 2];
        return d;
    }

    /**
     * The same slopes, but from one node on, and but for the ends, such that the curvature has no jump: else all of a bend may
     * crowd into one side of a node. The second derivative at an end of a piece is {@code 2 own^2 / (other h)} where it bends one
     * way (own and other: how far the slopes at its two ends lie off the chord's), and {@code 2 (2 own + other) / h} where it
     * turns; node by node the two are made equal, over and over.
     */
    static double[] evenSlopes(double[] y, double[] value, int first) {
        return evenSlopes(y, value, first, OptionalDouble.empty());
    }

    /** The same with a given slope at the lower end. */
    static double[] evenSlopes(double[] y, double[] value, int first, double end) {
        return evenSlopes(y, value, first, OptionalDouble.of(end));
    }

    private static double[] evenSlopes(double[] y, double[] value, int first, OptionalDouble end) {
        double[] d = slopes(y, value);
        int last = y.length - 1;
        end.ifPresent(slope -> d[last] = slope);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int i = Math.max(1, first); i < last; i++) {
                d[i] = evenSlope(y, value, d, i, end.isEmpty() && i == last - 1);
            }
            if (end.isEmpty() && first < last) {
                d[last] = 2 * chord(y, value, last - 1) - d[last - 1];
            }
        }
        return d;
    }

    private static double evenSlope(double[] y, double[] value, double[] d, int i, boolean even) {
        double above = chord(y, value, i - 1);
        double below = chord(y, value, i);
        double jump = Math.abs(below - above);
        if (jump < LEAST_JUMP) {
            return d[i];
        }
        double sign = Math.signum(below - above);
        double[] up = bend(sign * (above - d[i - 1]), y[i - 1] - y[i], jump);
        double[] down = even
                ? new double[] {0, 1 / (y[i] - y[i + 1]), 0}
                : bend(sign * (d[i + 1] - below), y[i] - y[i + 1], jump);
        double a = up[0] - down[0];
        double b = up[1] + 2 * down[0] * jump + down[1];
        double c = up[2] - down[0] * jump * jump - down[1] * jump - down[2];
        double x = -2 * c / (b + Math.sqrt(Math.max(0, b * b - 4 * a * c)));
        return above + sign * Math.max(ROOM * jump, Math.min((1 - ROOM) * jump, x));
    }

    /** Half the second derivative at one end, as a quadratic in how far the slope there lies off the chord's. */
    private static double[] bend(double other, double h, double jump) {
        return other > 0
                ? new double[] {1 / (Math.max(other, ROOM * jump) * h), 0, 0}
                : new double[] {0, 2 / h, -other / h};
    }

    private static double chord(double[] y, double[] value, int i) {
        return (value[i + 1] - value[i]) / (y[i + 1] - y[i]);
    }

    double at(double height) {
        int i = 0;
        while (i < y.length - 2 && height < y[i + 1]) {
            i++;
        }
        double h = y[i + 1] - y[i];
        double chord = (value[i + 1] - value[i]) / h;
        double s = (height - y[i]) / h;
        double r = 1 - s;
        double in = slope[i] - chord;
        double out = slope[i + 1] - chord;
        if (in * out < 0) {
            double tension = 1 - in / out - out / in;
            double top = value[i + 1] * s * s * s
                    + (tension * value[i + 1] - h * slope[i + 1]) * s * s * r
                    + (tension * value[i] + h * slope[i]) * s * r * r
                    + value[i] * r * r * r;
            return top / (1 + (tension - 3) * s * r);
        }
        return value[i] * (1 + 2 * s) * r * r
                + slope[i] * h * s * r * r
                + value[i + 1] * s * s * (3 - 2 * s)
                - slope[i + 1] * h * s * s * r;
    }

    /** Derivative by y. */
    double slopeAt(double height) {
        if (height >= y[0]) {
            return slope[0];
        }
        double step = Math.min(STEP, (y[0] - height) / 2 + STEP / 2);
        return (at(height + step) - at(height - step)) / (2 * step);
    }
}
