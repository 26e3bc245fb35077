package stretchwright.lay;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where one outline may not lie against another: the shifts at which their insides meet, as a union of convex
 * polygons, one for each pair of convex parts (the no-fit polygon, left in parts).
 *
 * <p>A shift is inside a part exactly if the convex parts' insides meet; whole shifts of whole outlines are decided
 * without rounding. How deep a shift lies is the least way out of the deepest part, in units: a lower bound on how far
 * the outlines must move apart, and zero exactly where they do not overlap.
 */
final class NoFit {
    /** Numbers for each edge: normal x and y (outward), offset, one over length. */
    private static final int EDGE = 4;

    final double minX;
    final double minY;
    final double maxX;
    final double maxY;
    private final int[] start;
    private final double[] box;
    private final double[] edge;

    private NoFit(int[] start, double[] box, double[] edge) {
        this.start = start;
        this.box = box;
        this.edge = edge;
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (int p = 0; p < box.length; p += 4) {
            x0 = Math.min(x0, box[p]);
            y0 = Math.min(y0, box[p + 1]);
            x1 = Math.max(x1, box[p + 2]);
            y1 = Math.max(y1, box[p + 3]);
        }
        minX = x0;
        minY = y0;
        maxX = x1;
        maxY = y1;
    }

    /** Shifts of the moving outline, from the lying one, at which they overlap. */
    static NoFit of(List<long[][]> moving, List<long[][]> lying) {
        int parts = moving.size() * lying.size();
        int[] start = new int[parts + 1];
        double[] box = new double[parts * 4];
        double[][] edges = new double[parts][];
        int p = 0;
        int size = 0;
        for (long[][] m : moving) {
            for (long[][] l : lying) {
                long[][] sum = sum(l, negative(m));
                edges[p] = edges(sum);
                box[p * 4] = Outline.least(sum[0]);
                box[p * 4 + 1] = Outline.least(sum[1]);
                box[p * 4 + 2] = Outline.greatest(sum[0]);
                box[p * 4 + 3] = Outline.greatest(sum[1]);
                size += edges[p].length;
                start[++p] = size;
            }
        }
        double[] edge = new double[size];
        for (int k = 0; k < parts; k++) {
            System.arraycopy(edges[k], 0, edge, start[k], edges[k].length);
        }
        return new NoFit(start, box, edge);
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

    private static double[] edges(long[][] part) {
        int n = part[0].length;
        double[] out = new double[n * EDGE];
        int size = 0;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            long dx = part[0][k] - part[0][i];
            long dy = part[1][k] - part[1][i];
            if (dx == 0 && dy == 0) {
                continue;
            }
            out[size++] = dy;
            out[size++] = -dx;
            out[size++] = dy * part[0][i] - dx * part[1][i];
            out[size++] = 1 / Math.sqrt((double) dx * dx + (double) dy * dy);
        }
        return Arrays.copyOf(out, size);
    }

    /** How deep a shift lies, in units; 0 where the outlines do not overlap. */
    double depth(double x, double y) {
        double deepest = 0;
        for (int p = 0; p < start.length - 1; p++) {
            int b = p * 4;
            if (x > box[b] && y > box[b + 1] && x < box[b + 2] && y < box[b + 3]) {
                deepest = Math.max(deepest, depth(p, x, y, deepest));
            }
        }
        return deepest;
    }

    /** The depth in one part, or anything not above the given depth where it is not deeper than that. */
    private double depth(int part, double x, double y, double atLeast) {
        double least = Double.POSITIVE_INFINITY;
        for (int e = start[part]; e < start[part + 1]; e += EDGE) {
            double inside = (edge[e + 2] - edge[e] * x - edge[e + 1] * y) * edge[e + 3];
            if (inside <= atLeast) {
                return 0;
            }
            least = Math.min(least, inside);
        }
        return least;
    }

    /** Normal x and y, offset and one over length of the nearest edge out of the deepest part; null where free. */
    double @Nullable [] wayOut(double x, double y) {
        double deepest = 0;
        int nearest = -1;
        for (int p = 0; p < start.length - 1; p++) {
            double least = depth(p, x, y, deepest);
            if (least > deepest) {
                deepest = least;
                for (int e = start[p]; e < start[p + 1]; e += EDGE) {
                    if ((edge[e + 2] - edge[e] * x - edge[e + 1] * y) * edge[e + 3] == least) {
                        nearest = e;
                    }
                }
            }
        }
        return nearest < 0 ? null : Arrays.copyOfRange(edge, nearest, nearest + EDGE);
    }
}
