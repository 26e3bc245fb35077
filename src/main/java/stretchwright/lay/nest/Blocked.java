package stretchwright.lay.nest;

import java.util.Arrays;

/**
 * Where a piece may not lie along one line of travel: open intervals of whole units.
 *
 * <p>Two trapezoids overlap, at a given offset across, exactly for the offsets between the least and the greatest
 * difference of their facing sides; both are straight, so these are found at the ends of the common span. The union
 * over all pairs of trapezoids is the exact set of overlapping positions (docs/maths/lay.md). Ends are compared as
 * doubles, and as exact fractions where a double comes near a whole number.
 */
final class Blocked {
    /** Far above the rounding of doubles at 2^28 units (about 1e-7), far below one unit. */
    private static final double NEAR = 1e-4;

    private long[] from = new long[64];
    private long[] to = new long[64];
    private int size;

    void clear() {
        size = 0;
    }

    /** Blocks the open interval; grows the last one where they share a whole number. */
    void add(long start, long stop) {
        if (stop - start < 2) {
            return;
        }
        if (size > 0 && start < to[size - 1] && from[size - 1] < stop) {
            from[size - 1] = Math.min(from[size - 1], start);
            to[size - 1] = Math.max(to[size - 1], stop);
            return;
        }
        if (size == from.length) {
            from = Arrays.copyOf(from, 2 * size);
            to = Arrays.copyOf(to, 2 * size);
        }
        from[size] = start;
        to[size++] = stop;
    }

    /** The least whole number of the beat from start on that is not blocked. */
    long firstFree(long start, Beat beat) {
        long at = beat.from(start);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < size; i++) {
                if (from[i] < at && at < to[i]) {
                    at = beat.from(to[i]);
                    moved = true;
                }
            }
        }
        return at;
    }

    /** Blocks where a moving piece, shifted along u against a lying one, would overlap it; v of the lying one added. */
    void addPair(Slabs lying, Slabs moving, long shift, long lyingV) {
        for (int i = 0; i < moving.count; i++) {
            long a = moving.begin[i] + shift;
            long b = moving.end[i] + shift;
            for (int j = lying.firstBeyond(a); j < lying.count && lying.begin[j] < b; j++) {
                if (lying.end[j] > a) {
                    addSpan(lying, j, moving, i, shift, Math.max(a, lying.begin[j]), Math.min(b, lying.end[j]), lyingV);
                }
            }
        }
    }

    private void addSpan(Slabs lying, int j, Slabs moving, int i, long shift, long a, long b, long lyingV) {
        double low = Math.min(lying.low(j, a) - moving.high(i, a - shift), lying.low(j, b) - moving.high(i, b - shift));
        double high =
                Math.max(lying.high(j, a) - moving.low(i, a - shift), lying.high(j, b) - moving.low(i, b - shift));
        long start = (long) Math.floor(low);
        if (near(low)) {
            Slabs.Edge below = lying.lowEdge(j);
            Slabs.Edge above = moving.highEdge(i);
            start = Math.min(floor(below, a, above, a - shift), floor(below, b, above, b - shift));
        }
        long stop = (long) Math.ceil(high);
        if (near(high)) {
            Slabs.Edge above = lying.highEdge(j);
            Slabs.Edge below = moving.lowEdge(i);
            stop = Math.max(-floor(below, a - shift, above, a), -floor(below, b - shift, above, b));
        }
        add(start + lyingV, stop + lyingV);
    }

    private static boolean near(double value) {
        return Math.abs(value - Math.rint(value)) < NEAR;
    }

    /** The height of one edge less that of another, rounded down, exactly. */
    private static long floor(Slabs.Edge one, long at, Slabs.Edge other, long otherAt) {
        long whole = one.whole(at) - other.whole(otherAt);
        return one.rest(at) * other.du() >= other.rest(otherAt) * one.du() ? whole : whole - 1;
    }
}
