package stretchwright.draft;

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
