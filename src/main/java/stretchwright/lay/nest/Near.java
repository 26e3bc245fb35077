package stretchwright.lay.nest;

/**
 * Which parts may lie near a box, for boxes that move often and are asked after far oftener.
 *
 * <p>The bed is cut into {@value #CELLS} bands across and as many along. For each band stands, as bits, which boxes have begun
 * by its end and which have ended before it; so the boxes that reach into any range of bands are read at once.
 */
final class Near {
    private static final int CELLS = 128;

    /** Numbers that hold one bit for each part. */
    final int words;

    private final Axis across;
    private final Axis along;

    Near(int parts, double width, double longest) {
        words = (parts + Long.SIZE - 1) / Long.SIZE;
        across = new Axis(parts, width);
        along = new Axis(parts, longest);
    }

    /** Where part i's box lies from now on. */
    void put(int i, double x0, double x1, double y0, double y1) {
        across.put(i, x0, x1);
        along.put(i, y0, y1);
    }

    /** Bands of the ends of a box, to be read by {@link #within}. */
    int from(double x0) {
        return across.cell(x0) * words;
    }

    int to(double x1) {
        return across.cell(x1) * words;
    }

    int fromAlong(double y0) {
        return along.cell(y0) * words;
    }

    int toAlong(double y1) {
        return along.cell(y1) * words;
    }

    /** Bits of the parts from 64 * word on that may reach into a box; none that does is left out. */
    long within(int word, int x0, int x1, int y0, int y1) {
        return across.begun[x1 + word] & along.begun[y1 + word] & ~across.ended[x0 + word] & ~along.ended[y0 + word];
    }

    /** One direction. */
    private final class Axis {
        private final double cells;
        private final int[] first;
        private final int[] last;
        private final long[] begun = new long[CELLS * words];
        private final long[] ended = new long[CELLS * words];

        Axis(int parts, double extent) {
            cells = CELLS / extent;
            first = new int[parts];
            last = new int[parts];
            // until they are put somewhere, all boxes lie in the first band
            for (int i = 0; i < parts; i++) {
                change(begun, i, 0, CELLS, true);
                change(ended, i, 1, CELLS, true);
            }
        }

        int cell(double at) {
            return (int) Math.max(0, Math.min(CELLS - 1, at * cells));
        }

        void put(int i, double from, double to) {
            int f = cell(from);
            int l = cell(to);
            change(begun, i, Math.min(f, first[i]), Math.max(f, first[i]), f < first[i]);
            change(ended, i, Math.min(l, last[i]) + 1, Math.max(l, last[i]) + 1, l < last[i]);
            first[i] = f;
            last[i] = l;
        }

        private void change(long[] bits, int i, int from, int to, boolean set) {
            long bit = 1L << i;
            int word = i / Long.SIZE;
            for (int c = from; c < Math.min(to, CELLS); c++) {
                bits[c * words + word] = set ? bits[c * words + word] | bit : bits[c * words + word] & ~bit;
            }
        }
    }
}
