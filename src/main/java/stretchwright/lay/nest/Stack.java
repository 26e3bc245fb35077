package stretchwright.lay.nest;

import java.util.Arrays;
import java.util.List;

/**
 * The least length of a strip that holds a few outlines, whose places across are known only within ranges: outlines that
 * overlap sideways wherever they lie in their ranges keep a distance along the strip.
 *
 * <p>For each pair the distances at which they overlap, wherever they lie, are open stretches; what lies between and
 * beyond them is tried, pair by pair, and the longest chain of distances is the length.
 */
public final class Stack {
    private static final double NEVER = Double.NEGATIVE_INFINITY;
    /** Taken off both ends of every stretch, in units: far above the rounding, far below what counts. */
    private static final double ROUNDING = 0.01;
    /** Copying and closing the chains once costs as much as looking at this many parts. */
    private static final int TRIED = 16;

    private final int n;
    private final List<Shape> shapes;
    private final NoFits noFits;
    private final double longer;
    private final double known;
    /** Of each pair the stretches, low and high in turn, in rising order, and how many numbers these are. */
    private final double[][] stretches;

    private final int[] first;
    private final int[] second;
    private final int[] counts;
    private final int[] order;
    private final double[] spans;
    /** Longest chains from row to column, for each depth of the trying: pieces, then the near and the far end of the strip. */
    private final double[][] chains;

    private final int near;
    private final int far;
    /** Rows and columns. */
    private final int m;

    private double least;
    private long work;

    /** @param gap that outlines keep from each other: so much a stretch is longer at both ends */
    public Stack(int n, List<Shape> shapes, NoFits noFits, double gap, double known) {
        this.n = n;
        this.near = n;
        this.far = n + 1;
        this.m = n + 2;
        this.shapes = shapes;
        this.noFits = noFits;
        this.longer = gap - ROUNDING;
        this.known = known;
        int pairs = n * (n - 1) / 2;
        stretches = new double[pairs][64];
        first = new int[pairs];
        second = new int[pairs];
        counts = new int[pairs];
        order = new int[pairs];
        spans = new double[pairs];
        chains = new double[pairs + 1][m * m];
    }

    /** The least length, or {@code known} where it is no shorter. */
    public double least(int[] variant, long[] from, long[] to) {
        begin(variant);
        int pairs = 0;
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < i; j++) {
                measure(pairs++, i, j, variant, from, to);
            }
        }
        sortPairs(pairs);
        least = known;
        attempt(0);
        return least;
    }

    /** Parts of no-fit polygons looked at so far. */
    public long work() {
        return work;
    }

    private void begin(int[] variant) {
        double[] c = chains[0];
        Arrays.fill(c, NEVER);
        double highest = 0;
        for (int i = 0; i < n; i++) {
            Shape s = shapes.get(variant[i]);
            c[i * m + i] = 0;
            c[near * m + i] = -s.minY;
            c[i * m + far] = s.maxY;
            highest = Math.max(highest, s.height());
        }
        c[near * m + near] = 0;
        c[far * m + far] = 0;
        c[near * m + far] = highest;
    }

    private void measure(int pair, int i, int j, int[] variant, long[] from, long[] to) {
        first[pair] = i;
        second[pair] = j;
        int v = variant[i];
        int w = variant[j];
        double x0 = from[i] - to[j];
        double x1 = to[i] - from[j];
        boolean inOrder = v <= w;
        NoFit noFit = inOrder ? noFits.of(v, w) : noFits.of(w, v);
        if (stretches[pair].length < 2 * noFit.parts()) {
            stretches[pair] = new double[2 * noFit.parts()];
        }
        work += noFit.parts();
        double[] s = stretches[pair];
        int count = noFit.stretches(inOrder ? x0 : -x1, inOrder ? x1 : -x0, longer, s);
        if (!inOrder) {
            for (int k = 0; k < count; k += 2) {
                double low = s[k];
                s[k] = -s[k + 1];
                s[k + 1] = -low;
            }
        }
        counts[pair] = joined(s, count);
        double span = 0;
        for (int k = 0; k < counts[pair]; k += 2) {
            span += s[k + 1] - s[k];
        }
        spans[pair] = span;
        order[pair] = pair;
    }

    /** Sorts stretches and joins those that overlap. */
    private static int joined(double[] s, int count) {
        for (int k = 2; k < count; k += 2) {
            double low = s[k];
            double high = s[k + 1];
            int at = k;
            for (; at > 0 && s[at - 2] > low; at -= 2) {
                s[at] = s[at - 2];
                s[at + 1] = s[at - 1];
            }
            s[at] = low;
            s[at + 1] = high;
        }
        int out = 0;
        for (int k = 0; k < count; k += 2) {
            if (out > 0 && s[k] < s[out - 1]) {
                s[out - 1] = Math.max(s[out - 1], s[k + 1]);
            } else {
                s[out] = s[k];
                s[out + 1] = s[k + 1];
                out += 2;
            }
        }
        return out;
    }

    /** The longest stretches first: they decide most. */
    private void sortPairs(int pairs) {
        for (int k = 1; k < pairs; k++) {
            int pair = order[k];
            int at = k;
            for (; at > 0 && spans[order[at - 1]] < spans[pair]; at--) {
                order[at] = order[at - 1];
            }
            order[at] = pair;
        }
    }

    private void attempt(int depth) {
        double[] c = chains[depth];
        double length = c[near * m + far];
        if (length >= least) {
            return;
        }
        if (depth == order.length || counts[order[depth]] == 0) {
            least = length;
            return;
        }
        int pair = order[depth];
        int i = first[pair];
        int j = second[pair];
        double[] s = stretches[pair];
        for (int k = 0; k <= counts[pair]; k += 2) {
            work += TRIED;
            double[] next = chains[depth + 1];
            System.arraycopy(c, 0, next, 0, c.length);
            boolean holds =
                    (k == 0 || tighten(next, j, i, s[k - 1])) && (k == counts[pair] || tighten(next, i, j, -s[k]));
            if (holds) {
                attempt(depth + 1);
            }
        }
    }

    /** Piece b lies at least so far beyond piece a; false where that goes round in a circle. */
    private boolean tighten(double[] c, int a, int b, double distance) {
        if (distance <= c[a * m + b]) {
            return true;
        }
        if (c[b * m + a] + distance > 0) {
            return false;
        }
        for (int u = 0; u < m; u++) {
            double to = c[u * m + a] + distance;
            for (int v = 0; to > NEVER && v < m; v++) {
                c[u * m + v] = Math.max(c[u * m + v], to + c[b * m + v]);
            }
        }
        return true;
    }
}
