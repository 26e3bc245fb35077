package stretchwright.ground;

import java.util.List;

/**
 * A piecewise cubic through points that never swings beyond them (Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980;
 * slopes after Fritsch and Butland), straight outside, with its exact integral from the first point on.
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;
    private final double[] area;

    /** Places rising; a place for each value. */
    public MonotoneCubic(List<Double> places, List<Double> values) {
        x = places.stream().mapToDouble(Double::doubleValue).toArray();
        y = values.stream().mapToDouble(Double::doubleValue).toArray();
        slope = slopes(x, y);
        area = new double[x.length];
        for (int i = 0; i + 1 < x.length; i++) {
            area[i + 1] = area[i] + part(i, 1);
        }
    }

    public double value(double at) {
        int i = interval(at);
        if (i < 0) {
            return y[0] + slope[0] * (at - x[0]);
        }
        if (i == x.length - 1) {
            return y[i] + slope[i] * (at - x[i]);
        }
        double h = x[i + 1] - x[i];
        double s = (at - x[i]) / h;
        double r = 1 - s;
        return y[i] * (1 + 2 * s) * r * r
                + slope[i] * h * s * r * r
                + y[i + 1] * s * s * (3 - 2 * s)
                - slope[i + 1] * h * s * s * r;
    }

    public double slope(double at) {
        int i = interval(at);
        if (i < 0 || i == x.length - 1) {
            return slope[Math.max(i, 0)];
        }
        double h = x[i + 1] - x[i];
        double s = (at - x[i]) / h;
        return 6 * s * (1 - s) * (y[i + 1] - y[i]) / h
                + slope[i] * (1 - s) * (1 - 3 * s)
                + slope[i + 1] * s * (3 * s - 2);
    }

    public double integral(double at) {
        int i = interval(at);
        int from = Math.max(i, 0);
        double past = at - x[from];
        if (i < 0 || i == x.length - 1) {
            return area[from] + (y[from] + slope[from] * past / 2) * past;
        }
        return area[i] + part(i, past / (x[i + 1] - x[i]));
    }

    /** Integral over the first share s of an interval. */
    private double part(int i, double s) {
        double h = x[i + 1] - x[i];
        double s2 = s * s;
        double s3 = s2 * s;
        double s4 = s3 * s;
        return h
                * (y[i] * (s - s3 + s4 / 2)
                        + slope[i] * h * (s2 / 2 - 2 * s3 / 3 + s4 / 4)
                        + y[i + 1] * (s3 - s4 / 2)
                        + slope[i + 1] * h * (s4 / 4 - s3 / 3));
    }

    /** Index of the last point not beyond the place, -1 before the first. */
    private int interval(double at) {
        int i = x.length - 1;
        while (i >= 0 && at < x[i]) {
            i--;
        }
        return i;
    }

    /** At the ends those of the chords; between them weighted harmonic means of both chords', level where they disagree in sign. */
    static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] secant = new double[n - 1];
        for (int i = 0; i + 1 < n; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] d = new double[n];
        d[0] = secant[0];
        d[n - 1] = secant[n - 2];
        for (int i = 1; i + 1 < n; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double w1 = 2 * after + before;
            double w2 = after + 2 * before;
            d[i] = secant[i - 1] * secant[i] > 0 ? (w1 + w2) / (w1 / secant[i - 1] + w2 / secant[i]) : 0;
        }
        return d;
    }
}
