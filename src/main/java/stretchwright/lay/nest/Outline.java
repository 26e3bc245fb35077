package stretchwright.lay.nest;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Small sums over corners in whole units. */
public final class Outline {
    private Outline() {}

    public static long least(long[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    public static long greatest(long[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }

    static long doubleArea(List<long[]> corners) {
        long twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            long[] a = corners.get(i);
            long[] b = corners.get((i + 1) % corners.size());
            twice += a[0] * b[1] - a[1] * b[0];
        }
        return twice;
    }

    /** The length of the outline. */
    public static double around(Shape shape) {
        double sum = 0;
        for (int i = 0; i < shape.corners(); i++) {
            int k = (i + 1) % shape.corners();
            sum += Math.hypot(shape.x[k] - shape.x[i], shape.y[k] - shape.y[i]);
        }
        return sum;
    }

    /** How high the outline is at least, turned by any angle up to this, in radians: as far as two of its corners lie apart. */
    public static double reach(Shape shape, double angle) {
        double most = 0;
        for (int i = 0; i < shape.corners(); i++) {
            for (int k = 0; k < i; k++) {
                double high = Math.abs(shape.y[k] - shape.y[i]) * Math.cos(angle);
                double aside = Math.abs(shape.x[k] - shape.x[i]) * Math.sin(angle);
                most = Math.max(most, high - aside);
            }
        }
        return most;
    }

    /** Keeps the corners at the box, and between them what stands off the chord (Ramer 1972, Douglas-Peucker 1973). */
    static Shape simplified(Shape shape, double tolerance) {
        int n = shape.corners();
        boolean[] keep = new boolean[n];
        int first = -1;
        for (int i = 0; i < n; i++) {
            keep[i] = shape.x[i] == shape.minX
                    || shape.x[i] == shape.maxX
                    || shape.y[i] == shape.minY
                    || shape.y[i] == shape.maxY;
            first = keep[i] && first < 0 ? i : first;
        }
        int from = first;
        for (int k = 1; k <= n; k++) {
            int to = first + k;
            if (keep[to % n]) {
                split(shape, from, to, tolerance, keep);
                from = to;
            }
        }
        int[] kept = IntStream.range(0, n).filter(i -> keep[i]).toArray();
        return Shape.of(
                Arrays.stream(kept).mapToLong(i -> shape.x[i]).toArray(),
                Arrays.stream(kept).mapToLong(i -> shape.y[i]).toArray());
    }

    private static void split(Shape shape, int from, int to, double tolerance, boolean[] keep) {
        int n = shape.corners();
        int farthest = -1;
        double most = tolerance;
        for (int i = from + 1; i < to; i++) {
            double off = distance(shape, i % n, from % n, to % n);
            if (off > most) {
                most = off;
                farthest = i;
            }
        }
        if (farthest >= 0) {
            keep[farthest % n] = true;
            split(shape, from, farthest, tolerance, keep);
            split(shape, farthest, to, tolerance, keep);
        }
    }

    private static double distance(Shape s, int p, int a, int b) {
        double dx = s.x[b] - s.x[a];
        double dy = s.y[b] - s.y[a];
        double px = s.x[p] - s.x[a];
        double py = s.y[p] - s.y[a];
        double length = Math.hypot(dx, dy);
        return length == 0 ? Math.hypot(px, py) : Math.abs(dx * py - dy * px) / length;
    }

    static long[] moved(long[] values, long by) {
        long[] out = new long[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = values[i] + by;
        }
        return out;
    }
}
