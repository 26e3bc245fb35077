package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;

/**
 * Smooth lines of drawings. Promise: a curve passes every point in the direction of the chord from the one before to the
 * one after; values between levels never leave those of the two levels (monotone cubic, Fritsch and Butland, SIAM J. Sci.
 * Stat. Comput. 5, 1984).
 */
final class Smooth {
    private Smooth() {}

    /** A piece of a curve: start, two controls, end. */
    record Arc(Point from, Point first, Point second, Point to) {
        Point at(double t) {
            double r = 1 - t;
            return from.times(r * r * r)
                    .plus(first.times(3 * r * r * t))
                    .plus(second.times(3 * r * t * t))
                    .plus(to.times(t * t * t));
        }
    }

    static List<Arc> arcs(List<Point> points, boolean closed) {
        List<Arc> arcs = new ArrayList<>();
        int count = points.size();
        for (int i = 0; i < (closed ? count : count - 1); i++) {
            Point from = points.get(i);
            Point to = points.get((i + 1) % count);
            double third = from.distance(to) / 3;
            arcs.add(new Arc(
                    from,
                    from.plus(direction(points, i, closed).times(third)),
                    to.minus(direction(points, (i + 1) % count, closed).times(third)),
                    to));
        }
        return arcs;
    }

    private static Point direction(List<Point> points, int i, boolean closed) {
        int count = points.size();
        Point before = points.get(closed ? (i + count - 1) % count : Math.max(0, i - 1));
        Point after = points.get(closed ? (i + 1) % count : Math.min(count - 1, i + 1));
        Point chord = after.minus(before);
        double length = chord.norm();
        return length == 0 ? Point.ORIGIN : chord.times(1 / length);
    }

    /** Points of the curve, so many for each piece. */
    static List<Point> sampled(List<Point> points, int each) {
        List<Point> out = new ArrayList<>();
        for (Arc arc : arcs(points, false)) {
            for (int i = 0; i < each; i++) {
                out.add(arc.at((double) i / each));
            }
        }
        out.add(points.get(points.size() - 1));
        return out;
    }

    /** The value at a height between levels that rise; beyond the ends the nearest end's. */
    static double at(double[] heights, double[] values, double height) {
        int last = heights.length - 1;
        if (height <= heights[0]) {
            return values[0];
        }
        if (height >= heights[last]) {
            return values[last];
        }
        int i = 0;
        while (height > heights[i + 1]) {
            i++;
        }
        double h = heights[i + 1] - heights[i];
        double t = (height - heights[i]) / h;
        double rest = 1 - t;
        return rest * rest * (1 + 2 * t) * values[i]
                + t * t * (3 - 2 * t) * values[i + 1]
                + h * t * rest * (rest * slope(heights, values, i) - t * slope(heights, values, i + 1));
    }

    private static double slope(double[] x, double[] y, int i) {
        if (i == 0) {
            return 0; // level at the ankle, where a leg is thinnest
        }
        if (i == x.length - 1) {
            return (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        }
        double before = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        double after = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        return before * after <= 0 ? 0 : 2 * before * after / (before + after);
    }

    /** So many heights from one to the other, both ends among them. */
    static List<Double> steps(double from, double to, int count) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            all.add(from + (to - from) * i / count);
        }
        return all;
    }

    static List<Point> reversed(List<Point> points) {
        List<Point> out = new ArrayList<>(points);
        java.util.Collections.reverse(out);
        return out;
    }
}
