package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;

/**
 * Lays a plain layout instance on its strip.
 *
 * <p>In: the instance, a seed, how long to search, and on how many threads. Out: a layout in which no two pieces
 * overlap, all lie on the strip and every copy is there (checked exactly in whole units before it is returned), or
 * findings where an item is higher than the strip, or there are too many. The same instance, seed and rounds give the same layout on any number
 * of threads; a stop by the clock is replayed by the rounds it reached. Method: docs/maths/lay.md.
 */
public final class StripLay {
    /** Positions and pairs tried for the first layout. */
    private static final long START = 100_000;
    /** Enclosing outlines stand off no more than this share of the strip's height. */
    private static final double TOLERANCE = 2e-4;
    /** Rows that fill the strip so well are not tried to better by batches. */
    private static final double DENSE = 0.85;
    /** More parts than this are not settled at the end: it takes up to 80 ms, and gains less than 0.01 %. */
    private static final int SETTLED = 60;

    private final StripInstance instance;
    private final Kinds kinds;
    private final LayClock clock;
    private final Consumer<StripResult.Step> better;
    private final List<StripResult.Step> history = new ArrayList<>();

    private StripLay(StripInstance instance, Kinds kinds, LayClock clock, Consumer<StripResult.Step> better) {
        this.instance = instance;
        this.kinds = kinds;
        this.clock = clock;
        this.better = better;
    }

    /**
     * @param effort rounds of work at most
     * @param threads 1 or 2; the layout is the same
     * @param clock may end the search earlier
     * @param better told of each layout shorter than all before, as it is found
     */
    public static Optional<StripResult> lay(
            StripInstance instance,
            long seed,
            Effort effort,
            int threads,
            LayClock clock,
            Consumer<StripResult.Step> better,
            Findings findings) {
        return Kinds.of(instance, findings)
                .map(kinds -> new StripLay(instance, kinds, clock, better))
                .map(lay -> lay.kinds.few() ? lay.few(seed, effort, threads) : lay.many(seed, effort, threads));
    }

    /**
     * Goes on from a layout of the same instance, as a first search does from its first layout: what a search knew besides is
     * not kept. The same layout, seed and rounds give the same again; the rounds and the history are those from here on.
     */
    public static Optional<StripResult> goOn(
            StripInstance instance,
            StripResult from,
            long seed,
            Effort effort,
            int threads,
            LayClock clock,
            Findings findings) {
        return Kinds.of(instance, findings)
                .map(kinds -> new StripLay(instance, kinds, clock, step -> {}))
                .map(lay -> lay.further(from, seed, effort, threads));
    }

    private StripResult further(StripResult from, long seed, Effort effort, int threads) {
        Optional<Bed> bed = kinds.searchable() ? Aside.of(clock, this::bed) : Optional.empty();
        return bed.map(b -> searched(b, kinds.scale.layout(b.parts, instance, from), seed, effort, threads))
                .orElseGet(() ->
                        new StripResult(from.placements(), from.length(), from.density(), new Effort(0, 0), List.of()));
    }

    /** From a layout by bottom-left. */
    private StripResult few(long seed, Effort effort, int threads) {
        List<Part> parts = parts(() -> false);
        long width = kinds.scale.width();
        Layout start = new Orders(Strip.plain(width), false, 1, START, clock::stop, layout -> {})
                .search(parts, RandomStream.of(seed, "strip lay"))
                .get(0)
                .layout()
                .of(parts);
        note(0, start.length());
        return Bed.of(parts, Strip.plain(width), TOLERANCE * width)
                .map(bed -> searched(bed, start, seed, effort, threads))
                .orElseGet(() -> result(placed(start), start.length(), new Effort(0, 0)));
    }

    /** Shortened by the crew, and brought into contact at last. */
    private StripResult searched(Bed bed, Layout start, long seed, Effort effort, int threads) {
        // also for the sake of the last check: it has to be quick, and its code is then no longer new to the machine
        StripCheck.mustHold(placed(start), kinds.demand, kinds.scale.width(), start.length());
        Crew.Result found = Crew.search(
                bed,
                start,
                seed,
                threads,
                effort,
                clock,
                f -> note(f.round(), f.layout().length()));
        boolean settle = kinds.copies() <= SETTLED;
        Layout last = settle
                ? new BottomLeft(Strip.plain(kinds.scale.width()), false).settled(found.layout())
                : found.layout();
        return result(placed(last), last.length(), found.spent());
    }

    /** From rows or batches; what the search needs is made ready beside, so that a stop is answered at once. */
    private StripResult many(long seed, Effort effort, int threads) {
        Rows rows = kinds.rows();
        Optional<Layout> batches = batches(rows).filter(l -> l.length() < rows.length());
        note(0, batches.map(Layout::length).orElse(rows.length()));
        boolean go = effort.explore() + effort.compress() > 0 && kinds.searchable() && !clock.stop();
        Optional<Bed> bed = go ? Aside.of(clock, this::bed) : Optional.empty();
        if (bed.isPresent()) {
            List<Part> parts = bed.get().parts;
            Layout start = batches.map(b -> b.of(parts)).orElseGet(() -> layout(parts, rows));
            return searched(bed.get(), start, seed, effort, threads);
        }
        Effort none = new Effort(0, 0);
        return batches.map(b -> result(placed(b), b.length(), none))
                .orElseGet(() -> result(rows.placed(), rows.length(), none));
    }

    private Optional<Layout> batches(Rows rows) {
        double density = instance.area() / (instance.stripHeight() * kinds.scale.out(rows.length()));
        int size = density < DENSE ? kinds.batch() : 0;
        return size > 0 ? Optional.of(Batches.lay(parts(() -> false), size, kinds.scale.width())) : Optional.empty();
    }

    private Optional<Bed> bed(BooleanSupplier dropped) {
        List<Part> parts = parts(dropped);
        long width = kinds.scale.width();
        return dropped.getAsBoolean() ? Optional.empty() : Bed.of(parts, Strip.plain(width), TOLERANCE * width);
    }

    /** All parts; not all of them once dropped. */
    private List<Part> parts(BooleanSupplier dropped) {
        List<Part> parts = new ArrayList<>();
        for (int k = 0; k < kinds.demand.length && !dropped.getAsBoolean(); k++) {
            parts.addAll(Collections.nCopies(kinds.demand[k], kinds.part(k)));
        }
        return parts;
    }

    private static Layout layout(List<Part> parts, Rows rows) {
        List<Layout.Spot> spots = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            StripCheck.Placed placed = rows.placed().get(i);
            int v = 0;
            while (part.variants().get(v).rotation() != placed.outline().rotation) {
                v++;
            }
            spots.add(new Layout.Spot(part, v, placed.x(), placed.y(), placed.y() + placed.outline().maxY));
        }
        return new Layout(spots, rows.length());
    }

    private void note(int round, long length) {
        StripResult.Step step = new StripResult.Step(round, kinds.scale.out(length));
        history.add(step);
        better.accept(step);
    }

    private static List<StripCheck.Placed> placed(Layout layout) {
        Map<Part.Variant, Turned> outlines = new IdentityHashMap<>();
        return layout.spots().stream()
                .map(s -> new StripCheck.Placed(
                        s.part().kind(),
                        outlines.computeIfAbsent(s.part().variants().get(s.variant()), Turned::of),
                        s.x(),
                        s.y()))
                .toList();
    }

    private StripResult result(List<StripCheck.Placed> placed, long units, Effort spent) {
        StripCheck.mustHold(placed, kinds.demand, kinds.scale.width(), units);
        double length = kinds.scale.out(units);
        return new StripResult(
                placed.stream().map(this::placement).toList(),
                length,
                instance.area() / (instance.stripHeight() * length),
                spent,
                history);
    }

    private StripResult.Placement placement(StripCheck.Placed placed) {
        return new StripResult.Placement(
                instance.items().get(placed.kind()).id(),
                kinds.scale.out(placed.y()),
                kinds.scale.out(placed.x()),
                placed.outline().rotation);
    }
}
