package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays many parts bottom-left in batches of a like mixture, each batch pushed down on those before it by its boxes: the
 * time grows with the number of parts, not with its cube.
 */
final class Batches {
    private final long width;
    private final List<Layout.Spot> all = new ArrayList<>();
    /** What reaches above the bottom of the last batch: nothing of the next one can come to lie below that. */
    private List<Layout.Spot> upper = new ArrayList<>();

    private long bottom;

    private Batches(long width) {
        this.width = width;
    }

    /** @param size parts of a batch, about */
    static Layout lay(List<Part> parts, int size, long width) {
        List<Part> order = parts.stream()
                .sorted(Comparator.comparingDouble(p -> -p.area()))
                .toList();
        int count = (order.size() + size - 1) / size;
        Batches batches = new Batches(width);
        for (int b = 0; b < count; b++) {
            List<Part> batch = new ArrayList<>();
            for (int i = b; i < order.size(); i += count) {
                batch.add(order.get(i));
            }
            batches.add(batch);
        }
        return new Layout(
                batches.all,
                batches.all.stream().mapToLong(Layout.Spot::top).max().orElse(0));
    }

    private void add(List<Part> batch) {
        Layout own = new BottomLeft(Strip.plain(width), false).lay(batch, Long.MAX_VALUE);
        if (own == null) {
            throw new IllegalStateException("a layout without a limit was not laid");
        }
        for (Layout.Spot spot : own.spots()) {
            for (Layout.Spot under : upper) {
                boolean above = left(spot) < right(under) && left(under) < right(spot);
                bottom = above ? Math.max(bottom, under.top() - foot(spot)) : bottom;
            }
        }
        List<Layout.Spot> next = new ArrayList<>();
        for (Layout.Spot s : own.spots()) {
            next.add(new Layout.Spot(s.part(), s.variant(), s.x(), s.y() + bottom, s.top() + bottom));
        }
        all.addAll(next);
        upper.addAll(next);
        upper = new ArrayList<>(upper.stream().filter(s -> s.top() > bottom).toList());
    }

    private static long left(Layout.Spot spot) {
        return spot.x() + spot.shape().minX;
    }

    private static long right(Layout.Spot spot) {
        return spot.x() + spot.shape().maxX;
    }

    private static long foot(Layout.Spot spot) {
        return spot.y() + spot.shape().minY;
    }
}
