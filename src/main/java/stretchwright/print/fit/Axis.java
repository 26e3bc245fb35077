package stretchwright.print.fit;

/** A straight scale: values from low to high over a stretch of the drawing, mm. */
record Axis(double low, double high, double start, double end) {
    double at(double value) {
        return start + (value - low) / (high - low) * (end - start);
    }

    /** A round step that gives at most so many intervals. */
    static double step(double range, int most) {
        for (double power = 0.001; ; power *= 10) {
            for (double digit : new double[] {1, 2, 5}) {
                double step = digit * power;
                if (range / step <= most) {
                    return step;
                }
            }
        }
    }

    /** The least whole number of steps that holds the value. */
    static double upTo(double value, double step) {
        return Math.max(1, Math.ceil(value / step - 1e-9)) * step;
    }
}
