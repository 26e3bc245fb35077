package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stretchwright.ground.MonotoneCurve;
import stretchwright.ground.Point;

/**
 * Smooth lines of drawings. Promise: a curve passes every point in the direction of the chord from the one before to the
 * one after; values between levels never leave those of the two levels ({@link MonotoneCurve}).
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

    /** Through values at heights from below; of an odd body a height that does not lie above the one before is left out. */
    static MonotoneCurve through(double[] heights, double[] values) {
        int[] rising = new int[heights.length];
        int count = 1;
        for (int i = 1; i < heights.length; i++) {
            if (heights[i] > heights[rising[count - 1]]) {
                rising[count++] = i;
            }
        }
        int[] kept = Arrays.copyOf(rising, count);
        return new MonotoneCurve(
                Arrays.stream(kept).mapToDouble(i -> heights[i]).toArray(),
                Arrays.stream(kept).mapToDouble(i -> values[i]).toArray());
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
