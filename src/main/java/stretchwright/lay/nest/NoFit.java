package stretchwright.lay.nest;

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
public final class NoFit {
    /** Numbers of a part's box: least x and y, greatest x and y. */
    private static final int BOX = 4;
    /** Numbers for each edge: outward unit normal x and y, and offset along it. */
    private static final int EDGE = 3;
    /** Four roundings of 2^-53 of the extent are less than a quarter over the edge up to 5.6 10^14; a third of that. */
    static final double EXACT = 2e14;

    /** The boxes of the parts, the largest first; read far oftener than the edges, so they lie close together. */
    private final double[] boxes;

    private final double[] edges;
    /** Where each part's edges begin, and where the last one's end. */
    private final int[] begin;
    /**
     * A whole shift lies on an edge, or off it by at least one over the edge's length: half of that tells the two
     * apart, and rounding stays below it as long as extent times edge is at most {@link #EXACT}.
     */
    private final double touch;

    private NoFit(List<long[][]> parts) {
        int n = parts.size();
        boxes = new double[n * BOX];
        begin = new int[n + 1];
        for (int k = 0; k < n; k++) {
            begin[k + 1] = begin[k] + EDGE * parts.get(k)[0].length;
        }
        edges = new double[begin[n]];
        double longest = 0;
        for (int k = 0; k < n; k++) {
            long[][] part = parts.get(k);
            System.arraycopy(box(part), 0, boxes, k * BOX, BOX);
            edges(part, begin[k]);
            longest = Math.max(longest, longestEdge(part));
        }
        touch = 0.5 / longest;
    }

    /** Shifts of the moving outline, from the lying one, at which they overlap. */
    static NoFit of(List<long[][]> moving, List<long[][]> lying) {
        List<long[][]> parts = new ArrayList<>();
        for (long[][] m : moving) {
            for (long[][] l : lying) {
                parts.add(sum(l, negative(m)));
            }
        }
        parts.sort(Comparator.comparingDouble(NoFit::boxArea).reversed());
        return new NoFit(parts);
    }

    private static double[] box(long[][] part) {
        return new double[] {
            Outline.least(part[0]), Outline.least(part[1]), Outline.greatest(part[0]), Outline.greatest(part[1])
        };
    }

    private static double boxArea(long[][] part) {
        double[] box = box(part);
        return (box[2] - box[0]) * (box[3] - box[1]);
    }

    /** How many numbers it is made of. */
    int size() {
        return boxes.length + edges.length;
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

    private void edges(long[][] corners, int at) {
        int n = corners[0].length;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            long dx = corners[0][k] - corners[0][i];
            long dy = corners[1][k] - corners[1][i];
            double length = Math.sqrt((double) dx * dx + (double) dy * dy);
            edges[at + EDGE * i] = dy / length;
            edges[at + EDGE * i + 1] = -dx / length;
            edges[at + EDGE * i + 2] = (dy * corners[0][i] - dx * corners[1][i]) / length;
        }
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

    int parts() {
        return begin.length - 1;
    }

    /**
     * Stretches of y, low and high in turn, at which the outlines overlap for every x from x0 to x1, one for each part that has one:
     * a part is convex, so what lies inside it at both ends lies inside it between them.
     *
     * @param longer added to both ends of a stretch
     * @return how many numbers were written
     */
    int stretches(double x0, double x1, double longer, double[] out) {
        int count = 0;
        for (int part = 0; part < parts(); part++) {
            // upright edges lie at the ends of the box
            if (x0 > boxes[part * BOX] && x1 < boxes[part * BOX + 2]) {
                double low = boxes[part * BOX + 1];
                double high = boxes[part * BOX + 3];
                for (int at = begin[part]; at < begin[part + 1]; at += EDGE) {
                    double up = edges[at + 1];
                    if (up > 0) {
                        high = Math.min(high, (edges[at + 2] - Math.max(edges[at] * x0, edges[at] * x1)) / up);
                    } else if (up < 0) {
                        low = Math.max(low, (edges[at + 2] - Math.max(edges[at] * x0, edges[at] * x1)) / up);
                    }
                }
                if (low < high && low - longer < high + longer) {
                    out[count++] = low - longer;
                    out[count++] = high + longer;
                }
            }
        }
        return count;
    }

    /** The depths of a shift in all parts together, in units; 0 where the outlines do not overlap. */
    public double depth(double x, double y) {
        return depth(x, y, Double.POSITIVE_INFINITY);
    }

    /** The same up to what is enough: anything not below that once it is reached. */
    public double depth(double x, double y, double enough) {
        final double[] b = boxes;
        double sum = 0;
        for (int p = 0; p < b.length; p += BOX) {
            if (x > b[p] && y > b[p + 1] && x < b[p + 2] && y < b[p + 3]) {
                double out = wayOutOf(p / BOX, x, y);
                if (out > touch) {
                    sum += out;
                    if (sum >= enough) {
                        return sum;
                    }
                }
            }
        }
        return sum;
    }

    /** The least way out of a part; anything up to what counts as touching where the shift is not inside it. */
    private double wayOutOf(int part, double x, double y) {
        final double[] e = edges;
        double least = Double.POSITIVE_INFINITY;
        for (int at = begin[part]; at < begin[part + 1]; at += EDGE) {
            double inside = e[at + 2] - e[at] * x - e[at + 1] * y;
            if (inside < least) {
                least = inside;
                if (inside <= touch) {
                    return inside;
                }
            }
        }
        return least;
    }

    /** Outward unit normal x and y, and offset, of the nearest edge out of the deepest part; null where free. */
    double @Nullable [] wayOut(double x, double y) {
        double deepest = touch;
        int nearest = -1;
        for (int part = 0; part + 1 < begin.length; part++) {
            double out = wayOutOf(part, x, y);
            if (out > deepest) {
                deepest = out;
                nearest = part;
            }
        }
        return nearest < 0 ? null : nearestEdge(nearest, x, y);
    }

    private double[] nearestEdge(int part, double x, double y) {
        int nearest = begin[part];
        double least = Double.POSITIVE_INFINITY;
        for (int at = begin[part]; at < begin[part + 1]; at += EDGE) {
            double inside = edges[at + 2] - edges[at] * x - edges[at + 1] * y;
            if (inside < least) {
                least = inside;
                nearest = at;
            }
        }
        return Arrays.copyOfRange(edges, nearest, nearest + EDGE);
    }
}
