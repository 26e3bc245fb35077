package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where one outline may not lie against another: the shifts at which their insides meet, as a union of convex
 * polygons, one for each pair of convex parts (the no-fit polygon, left in parts).
 *
 * <p>A shift is inside a part exactly if the convex parts' insides meet; whole shifts of whole outlines are decided
 * without rounding. How deep a shift lies in a part is the least way out of it, in units; the sum of these over all parts
 * grows with the overlap and is zero exactly where there is none.
 */
final class NoFit {
    /** Numbers before a part's edges: its box, and where the next part begins. */
    private static final int HEAD = 5;
    /** Numbers for each edge: outward unit normal x and y, and offset along it. */
    private static final int EDGE = 3;
    /** Four roundings of 2^-53 of the extent are less than a quarter over the edge up to 5.6 10^14; a third of that. */
    static final double EXACT = 2e14;

    private final double[] data;
    /**
     * A whole shift lies on an edge, or off it by at least one over the edge's length: half of that tells the two
     * apart, and rounding stays below it as long as extent times edge is at most {@link #EXACT}.
     */
    private final double touch;

    private NoFit(double[] data, double touch) {
        this.data = data;
        this.touch = touch;
    }

    /** Shifts of the moving outline, from the lying one, at which they overlap. */
    static NoFit of(List<long[][]> moving, List<long[][]> lying) {
        List<double[]> parts = new ArrayList<>();
        int size = 0;
        double longest = 0;
        for (long[][] m : moving) {
            for (long[][] l : lying) {
                long[][] sum = sum(l, negative(m));
                longest = Math.max(longest, longestEdge(sum));
                double[] part = part(sum);
                parts.add(part);
                size += part.length;
            }
        }
        parts.sort(Comparator.comparingDouble(p -> -(p[2] - p[0]) * (p[3] - p[1])));
        double[] data = new double[size];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, data, at, part.length);
            data[at + 4] = at + part.length;
            at += part.length;
        }
        return new NoFit(data, 0.5 / longest);
    }

    /** How many numbers it is made of. */
    int size() {
        return data.length;
    }

    static double longestEdge(long[][] corners) {
        int n = corners[0].length;
        double longest = 0;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            longest = Math.max(longest, Math.hypot(corners[0][k] - corners[0][i], corners[1][k] - corners[1][i]));
        }
        return longest;
    }

    private static double[] part(long[][] corners) {
        int n = corners[0].length;
        double[] out = new double[HEAD + n * EDGE];
        out[0] = Outline.least(corners[0]);
        out[1] = Outline.least(corners[1]);
        out[2] = Outline.greatest(corners[0]);
        out[3] = Outline.greatest(corners[1]);
        int size = HEAD;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            long dx = corners[0][k] - corners[0][i];
            long dy = corners[1][k] - corners[1][i];
            double length = Math.sqrt((double) dx * dx + (double) dy * dy);
            out[size++] = dy / length;
            out[size++] = -dx / length;
            out[size++] = (dy * corners[0][i] - dx * corners[1][i]) / length;
        }
        return out;
    }

    private static long[][] negative(long[][] part) {
        long[][] out = new long[2][part[0].length];
        for (int i = 0; i < part[0].length; i++) {
            out[0][i] = -part[0][i];
            out[1][i] = -part[1][i];
        }
        return out;
    }

    /** The Minkowski sum of two convex outlines: their edges merged by direction. */
    static long[][] sum(long[][] a, long[][] b) {
        int n = a[0].length;
        int m = b[0].length;
        int i0 = lowest(a);
        int j0 = lowest(b);
        long[] x = new long[n + m];
        long[] y = new long[n + m];
        int i = 0;
        int j = 0;
        int size = 0;
        while (i < n || j < m) {
            int ia = (i0 + i) % n;
            int jb = (j0 + j) % m;
            x[size] = a[0][ia] + b[0][jb];
            y[size++] = a[1][ia] + b[1][jb];
            long cross = (a[0][(ia + 1) % n] - a[0][ia]) * (b[1][(jb + 1) % m] - b[1][jb])
                    - (a[1][(ia + 1) % n] - a[1][ia]) * (b[0][(jb + 1) % m] - b[0][jb]);
            int inA = j == m || (i < n && cross >= 0) ? 1 : 0;
            j += i == n || (j < m && cross <= 0) ? 1 : 0;
            i += inA;
        }
        return new long[][] {Arrays.copyOf(x, size), Arrays.copyOf(y, size)};
    }

    private static int lowest(long[][] part) {
        int best = 0;
        for (int i = 1; i < part[0].length; i++) {
            if (part[1][i] < part[1][best] || (part[1][i] == part[1][best] && part[0][i] < part[0][best])) {
                best = i;
            }
        }
        return best;
    }

    /** The depths of a shift in all parts together, in units; 0 where the outlines do not overlap. */
    double depth(double x, double y) {
        final double[] d = data;
        double sum = 0;
        for (int p = 0; p < d.length; ) {
            int end = (int) d[p + 4];
            if (x > d[p] && y > d[p + 1] && x < d[p + 2] && y < d[p + 3]) {
                double least = Double.POSITIVE_INFINITY;
                for (int e = p + HEAD; e < end; e += EDGE) {
                    double inside = d[e + 2] - d[e] * x - d[e + 1] * y;
                    if (inside < least) {
                        least = inside;
                        if (inside <= touch) {
                            break;
                        }
                    }
                }
                if (least > touch) {
                    sum += least;
                }
            }
            p = end;
        }
        return sum;
    }

    /** Outward unit normal x and y, and offset, of the nearest edge out of the deepest part; null where free. */
    double @Nullable [] wayOut(double x, double y) {
        double deepest = touch;
        int nearest = -1;
        for (int p = 0; p < data.length; p = (int) data[p + 4]) {
            double least = Double.POSITIVE_INFINITY;
            int at = -1;
            for (int e = p + HEAD; e < (int) data[p + 4]; e += EDGE) {
                double inside = data[e + 2] - data[e] * x - data[e + 1] * y;
                if (inside < least) {
                    least = inside;
                    at = e;
                }
            }
            if (least > deepest) {
                deepest = least;
                nearest = at;
            }
        }
        return nearest < 0 ? null : Arrays.copyOfRange(data, nearest, nearest + EDGE);
    }
}
