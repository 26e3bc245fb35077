package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;

/**
 * Smooth lines for drawings of people. In: a few points. Out: many on a curve through all of them. Promise of
 * {@link #at}: no bulge between two points (monotone cubic, Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984).
 */
final class SmoothLine {
    private static final int STEPS = 8;

    private SmoothLine() {}

    /** An open curve (Catmull and Rom 1974, uniform) through the points. */
    static List<Point> through(List<Point> points) {
        List<Point> out = new ArrayList<>();
        int last = points.size() - 1;
        for (int i = 0; i < last; i++) {
            Point before = points.get(Math.max(0, i - 1));
            Point after = points.get(Math.min(last, i + 2));
            for (int step = 0; step < STEPS; step++) {
                double t = (double) step / STEPS;
                Point from = points.get(i);
                Point to = points.get(i + 1);
                out.add(new Point(
                        catmull(before.x(), from.x(), to.x(), after.x(), t),
                        catmull(before.y(), from.y(), to.y(), after.y(), t)));
            }
        }
        out.add(points.get(last));
        return out;
    }

    private static double catmull(double a, double b, double c, double d, double t) {
        return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }

    /** The value at x of the curve through (x, y); x grows. Beyond the ends the nearest end's. */
    static double at(double[] x, double[] y, double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (at > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        double rest = 1 - t;
        return rest * rest * (1 + 2 * t) * y[i]
                + t * t * (3 - 2 * t) * y[i + 1]
                + h * t * rest * (rest * slope(x, y, i) - t * slope(x, y, i + 1));
    }

    private static double slope(double[] x, double[] y, int i) {
        if (i == 0 || i == x.length - 1) {
            int from = i == 0 ? 0 : i - 1;
            return (y[from + 1] - y[from]) / (x[from + 1] - x[from]);
        }
        double before = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        double after = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        return before * after <= 0 ? 0 : 2 * before * after / (before + after);
    }
}
