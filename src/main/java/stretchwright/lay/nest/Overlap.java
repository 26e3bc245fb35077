package stretchwright.lay.nest;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Whether the insides of two simple outlines in whole units share a point; touching is no overlap. Exact.
 *
 * <p>If no two edges cross properly, every contact is at a corner, so each edge falls into stretches between contact
 * corners that lie wholly inside, outside or on the other outline; the middle of a stretch decides. If no stretch of
 * either lies inside the other, the insides are disjoint or the outlines are the same (docs/maths/lay.md). Coordinates
 * below 2^28: doubled for the middles they stay below 2^29, and the products below 2^62.
 */
public final class Overlap {
    private enum Side {
        IN,
        ON,
        OUT
    }

    private Overlap() {}

    public static boolean between(long[] ax, long[] ay, long[] bx, long[] by) {
        if (Outline.greatest(ax) <= Outline.least(bx)
                || Outline.greatest(bx) <= Outline.least(ax)
                || Outline.greatest(ay) <= Outline.least(by)
                || Outline.greatest(by) <= Outline.least(ay)) {
            return false;
        }
        return cross(ax, ay, bx, by) || stretches(ax, ay, bx, by, true) || stretches(bx, by, ax, ay, false);
    }

    private static boolean cross(long[] ax, long[] ay, long[] bx, long[] by) {
        for (int i = 0; i < ax.length; i++) {
            int i2 = (i + 1) % ax.length;
            for (int j = 0; j < bx.length; j++) {
                int j2 = (j + 1) % bx.length;
                if (Math.max(ax[i], ax[i2]) > Math.min(bx[j], bx[j2])
                        && Math.max(bx[j], bx[j2]) > Math.min(ax[i], ax[i2])
                        && turn(ax[i], ay[i], ax[i2], ay[i2], bx[j], by[j])
                                        * turn(ax[i], ay[i], ax[i2], ay[i2], bx[j2], by[j2])
                                < 0
                        && turn(bx[j], by[j], bx[j2], by[j2], ax[i], ay[i])
                                        * turn(bx[j], by[j], bx[j2], by[j2], ax[i2], ay[i2])
                                < 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a stretch of a lies inside b; if asked, also whether all of them lie on it (the same outline). */
    private static boolean stretches(long[] ax, long[] ay, long[] bx, long[] by, boolean orSame) {
        boolean allOn = true;
        for (int i = 0; i < ax.length; i++) {
            int i2 = (i + 1) % ax.length;
            long[] cuts = cuts(ax[i], ay[i], ax[i2], ay[i2], bx, by);
            for (int k = 0; k + 1 < cuts.length; k++) {
                long x = 0;
                long y = 0;
                for (int c : new int[] {k, k + 1}) {
                    x += cutX(cuts[c], ax[i], ax[i2], bx);
                    y += cutX(cuts[c], ay[i], ay[i2], by);
                }
                Side side = side(x, y, bx, by);
                if (side == Side.IN) {
                    return true;
                }
                allOn &= side == Side.ON;
            }
        }
        return orSame && allOn;
    }

    /** The ends (-2 and -1) and the corners of b that lie within the edge, in the edge's direction. */
    private static long[] cuts(long x0, long y0, long x1, long y1, long[] bx, long[] by) {
        long[] inner = IntStream.range(0, bx.length)
                .filter(j -> turn(x0, y0, x1, y1, bx[j], by[j]) == 0
                        && along(x0, y0, x1, y1, bx[j], by[j]) > 0
                        && along(x1, y1, x0, y0, bx[j], by[j]) > 0)
                .boxed()
                .sorted(Comparator.comparingLong(j -> along(x0, y0, x1, y1, bx[j], by[j])))
                .mapToLong(j -> j)
                .toArray();
        long[] out = new long[inner.length + 2];
        System.arraycopy(inner, 0, out, 1, inner.length);
        out[0] = -2;
        out[out.length - 1] = -1;
        return out;
    }

    private static long cutX(long cut, long from, long to, long[] b) {
        return cut == -2 ? from : cut == -1 ? to : b[(int) cut];
    }

    private static long along(long x0, long y0, long x1, long y1, long x, long y) {
        return (x1 - x0) * (x - x0) + (y1 - y0) * (y - y0);
    }

    /** +1 if the third point lies to the left of the line from the first to the second, -1 right, 0 on it. */
    private static int turn(long x0, long y0, long x1, long y1, long x, long y) {
        return Long.signum((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0));
    }

    /** Where a point given in half units lies (crossings of the ray to the right). */
    private static Side side(long x, long y, long[] bx, long[] by) {
        boolean inside = false;
        for (int j = 0; j < bx.length; j++) {
            int k = (j + 1) % bx.length;
            long x0 = 2 * bx[j];
            long y0 = 2 * by[j];
            long x1 = 2 * bx[k];
            long y1 = 2 * by[k];
            if (Math.min(y0, y1) > y || Math.max(y0, y1) < y || Math.max(x0, x1) < x) {
                continue;
            }
            int turn = turn(x0, y0, x1, y1, x, y);
            if (turn == 0 && Math.min(x0, x1) <= x) {
                return Side.ON;
            }
            if ((y0 > y) != (y1 > y) && (turn > 0) == (y1 > y0)) {
                inside = !inside;
            }
        }
        return inside ? Side.IN : Side.OUT;
    }
}
