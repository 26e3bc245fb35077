package stretchwright.lay;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.RandomStream;

/**
 * The shortest layout of a spread that was found: bottom-left over many orders, and from the best of these on the search
 * that lets parts overlap. Counted in work, so the same input gives the same layout.
 */
final class LaySearch {
    /** Positions and pairs tried while choosing among orders; a fraction of a second (docs/maths/lay.md). */
    private static final long BUDGET = 150_000;
    /** Orders laid again with the true outlines. */
    private static final int KEPT = 3;
    /** Enclosing outlines stand off no more than this, in units: 0.3 mm. */
    private static final double TOLERANCE = 30;

    private final Spread spread;
    private final long seed;

    LaySearch(Spread spread, long seed) {
        this.spread = spread;
        this.seed = seed;
    }

    /** By bottom-left alone. */
    Layout quick() {
        Orders orders = new Orders(spread.strip, true, KEPT, BUDGET, () -> false, layout -> {});
        BottomLeft exact = new BottomLeft(spread.strip, false);
        return orders.search(spread.parts, new RandomStream(seed)).stream()
                .map(found -> exact.lay(found.order(), Long.MAX_VALUE))
                .min(Comparator.comparingLong(Layout::length))
                .orElseThrow()
                .of(spread.parts);
    }

    /** Searched on from a layout; never longer. */
    Layout longer(Layout start, Effort effort, LayClock clock) {
        Optional<Bed> bed = Bed.of(spread.parts, spread.strip, TOLERANCE, spread.floor());
        if (bed.isEmpty()) {
            return start;
        }
        Layout found =
                Crew.search(bed.get(), start, seed, 2, effort, clock, f -> {}).layout();
        Layout settled = new BottomLeft(spread.strip, false).settled(found);
        return List.of(start, settled).stream()
                .min(Comparator.comparingLong(Layout::length))
                .orElseThrow();
    }
}
