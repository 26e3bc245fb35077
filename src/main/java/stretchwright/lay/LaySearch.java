package stretchwright.lay;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Aside;
import stretchwright.lay.nest.Bed;
import stretchwright.lay.nest.BottomLeft;
import stretchwright.lay.nest.Crew;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.Enclosing;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.Layout;
import stretchwright.lay.nest.Orders;
import stretchwright.lay.nest.Part;

/**
 * The shortest layout of a spread that was found: bottom-left over many orders, and from the best of these on the search
 * that lets parts overlap, first with coarse outlines round the true ones, then with finer ones. Counted in work, so the
 * same input gives the same layout.
 */
final class LaySearch {
    /** Positions and pairs tried while choosing among orders; a fraction of a second (docs/maths/lay.md). */
    private static final long BUDGET = 50_000;

    private static final long BUDGET_OF_MORE = 150_000;
    /** Orders laid again with the true outlines. */
    private static final int KEPT = 3;
    /** More parts than this are laid by coarse outlines to start with. */
    private static final int FEW = 8;
    /** More than this are many: no-fit polygons of finer outlines would not be kept in memory. */
    private static final int MANY = 100;
    /** More parts than this are not settled once it is to stop. */
    private static final int SETTLED = 60;

    private final Spread spread;
    private final long seed;
    private final LayClock beside;
    private final List<Part> coarse;
    private final List<Part> fine;

    /** @param beside cuts short what comes before the search and after it */
    LaySearch(Spread spread, long seed, LayClock beside) {
        this.spread = spread;
        this.seed = seed;
        this.beside = beside;
        this.coarse = Enclosing.all(spread.parts, off(300, 300, 500));
        this.fine = Enclosing.all(spread.parts, off(60, 100, 200));
    }

    /** How far enclosing outlines may stand off for few, some and many parts, in units of 0.01 mm. */
    private double off(double few, double some, double many) {
        int n = spread.parts.size();
        return n <= FEW ? few : n <= MANY ? some : many;
    }

    /** By bottom-left alone; at least one order is laid. */
    Layout quick() {
        if (spread.parts.size() > FEW) {
            return orders(coarse, false, 1)
                    .search(coarse, new RandomStream(seed))
                    .get(0)
                    .layout()
                    .of(spread.parts);
        }
        BottomLeft exact = new BottomLeft(spread.strip, false);
        return orders(spread.parts, true, KEPT).search(spread.parts, new RandomStream(seed)).stream()
                .map(found -> exact.lay(found.order(), Long.MAX_VALUE))
                .min(Comparator.comparingLong(Layout::length))
                .orElseThrow()
                .of(spread.parts);
    }

    private Orders orders(List<Part> parts, boolean rough, int keep) {
        return new Orders(
                spread.strip, rough, keep, parts.size() > FEW ? BUDGET_OF_MORE : BUDGET, beside::stop, layout -> {});
    }

    /**
     * Searched on from a layout; never longer.
     *
     * @param enough no layout is shorter, mm; the search ends where it comes down to this
     */
    Layout longer(Layout start, Effort effort, double enough, LayClock clock) {
        Layout rough = found(coarse, start.of(coarse), new Effort(effort.explore(), 0), enough, clock)
                .of(spread.parts);
        Layout finer = found(fine, rough, new Effort(0, effort.compress()), enough, clock)
                .of(spread.parts);
        boolean settle = spread.parts.size() <= SETTLED || !beside.stop();
        Layout last = settle ? new BottomLeft(spread.strip, false).settled(finer) : finer;
        return Stream.of(start, last)
                .min(Comparator.comparingLong(Layout::length))
                .orElseThrow();
    }

    private Layout found(List<Part> parts, Layout start, Effort effort, double enough, LayClock clock) {
        Optional<Bed> bed = Aside.of(
                beside,
                dropped -> dropped.getAsBoolean()
                        ? Optional.empty()
                        : Bed.of(parts, spread.strip, 0, spread.floor(), spread.units(enough)));
        return bed.isEmpty()
                ? start
                : Crew.search(bed.get(), start.of(parts), seed, 2, effort, clock, f -> {})
                        .layout();
    }
}
