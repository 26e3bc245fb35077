package stretchwright.lay.nest;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Lays outlines by their boxes in rows across the strip, the highest first, each in the row that it leaves fullest
 * (best fit by decreasing height): a first layout of many parts, or of outlines with many corners, in almost no time.
 *
 * <p>In whole units; time grows little faster than the number of copies. A row is as high as its first box, so the
 * length is never more than all heights together.
 */
final class Shelves {
    /** Where the copies' origins come to lie, those of one kind together, in the order of the kinds. */
    record Origins(long[] x, long[] y, long length) {}

    /** What a row has free: from left on, on its bottom. */
    private record Row(long left, long bottom) {}

    private final long width;
    /** By the width that is free. */
    private final TreeMap<Long, ArrayDeque<Row>> rows = new TreeMap<>();

    private long length;

    private Shelves(long width) {
        this.width = width;
    }

    /**
     * @param outlines one of each kind, none wider than the strip
     * @param demand copies of each
     */
    static Origins lay(List<Turned> outlines, int[] demand, long width) {
        int[] first = new int[demand.length + 1];
        for (int k = 0; k < demand.length; k++) {
            first[k + 1] = Math.addExact(first[k], demand[k]);
        }
        long[] x = new long[first[demand.length]];
        long[] y = new long[x.length];
        Shelves shelves = new Shelves(width);
        for (int k : order(outlines)) {
            Turned outline = outlines.get(k);
            for (int copy = first[k]; copy < first[k + 1]; copy++) {
                Row place = shelves.place(outline);
                x[copy] = place.left - outline.minX;
                y[copy] = place.bottom - outline.minY;
            }
        }
        return new Origins(x, y, shelves.length);
    }

    private static int[] order(List<Turned> outlines) {
        return IntStream.range(0, outlines.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(k -> -outlines.get(k).height())
                        .thenComparingLong(k -> -outlines.get(k).width()))
                .mapToInt(k -> k)
                .toArray();
    }

    /** Takes the room of the box from the row that it leaves fullest, or from a new one. */
    private Row place(Turned outline) {
        Map.Entry<Long, ArrayDeque<Row>> fullest = rows.ceilingEntry(outline.width());
        Row row;
        if (fullest == null) {
            row = new Row(0, length);
            length += outline.height();
        } else {
            row = fullest.getValue().remove();
            if (fullest.getValue().isEmpty()) {
                rows.remove(fullest.getKey());
            }
        }
        long left = row.left + outline.width();
        rows.computeIfAbsent(width - left, w -> new ArrayDeque<>()).add(new Row(left, row.bottom));
        return row;
    }
}
