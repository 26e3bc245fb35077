package stretchwright.lay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;

/**
 * Lays a plain layout instance on its strip.
 *
 * <p>In: the instance, a seed, how long to search, and on how many threads. Out: a layout in which no two pieces
 * overlap, all lie on the strip and every copy is there (checked exactly in whole units before it is returned), or
 * findings where an item is higher than the strip. The same instance, seed and rounds give the same layout on any number
 * of threads; a stop by the clock is replayed by the rounds it reached. Method: docs/maths/lay.md.
 */
public final class StripLay {
    /** Positions and pairs tried for the first layout. */
    private static final long START = 100_000;
    /** Enclosing outlines stand off no more than this share of the strip's height. */
    private static final double TOLERANCE = 2e-4;

    private final StripInstance instance;
    private final StripScale scale;
    private final List<Part> parts = new ArrayList<>();
    private final List<StripResult.Step> history = new ArrayList<>();

    private StripLay(StripInstance instance, Findings findings) {
        this.instance = instance;
        this.scale = StripScale.of(instance);
        for (int i = 0; i < instance.items().size(); i++) {
            StripInstance.Item item = instance.items().get(i);
            Part part = scale.part(i, item, instance.rotations());
            if (part.variants().isEmpty()) {
                findings.add(
                        "items." + item.id(),
                        "The item is higher than the strip of " + instance.stripHeight()
                                + " in every rotation allowed.",
                        "Make the strip higher or the item lower.");
            }
            for (int copy = 0; copy < item.demand(); copy++) {
                parts.add(part);
            }
        }
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
        StripLay lay = new StripLay(instance, findings);
        return findings.isEmpty() ? Optional.of(lay.search(seed, effort, threads, clock, better)) : Optional.empty();
    }

    private StripResult search(
            long seed, Effort effort, int threads, LayClock clock, Consumer<StripResult.Step> better) {
        Strip strip = Strip.plain(scale.width());
        Orders orders = new Orders(strip, false, 1, START, clock::stop, layout -> {});
        Layout best = orders.search(parts, RandomStream.of(seed, "strip lay"))
                .get(0)
                .layout()
                .of(parts);
        note(0, best, better);
        Effort spent = new Effort(0, 0);
        Optional<Bed> bed = Bed.of(parts, strip, TOLERANCE * scale.width());
        if (bed.isPresent()) {
            Crew.Result found = Crew.search(
                    bed.get(), best, seed, threads, effort, clock, f -> note(f.round(), f.layout(), better));
            spent = found.spent();
            best = new BottomLeft(strip, false).settled(found.layout());
        }
        check(instance, scale, best);
        double length = scale.out(best.length());
        return new StripResult(
                best.spots().stream().map(s -> placement(instance, scale, s)).toList(),
                length,
                instance.area() / (instance.stripHeight() * length),
                spent,
                history);
    }

    private void note(int round, Layout layout, Consumer<StripResult.Step> better) {
        StripResult.Step step = new StripResult.Step(round, scale.out(layout.length()));
        history.add(step);
        better.accept(step);
    }

    private static StripResult.Placement placement(StripInstance instance, StripScale scale, Layout.Spot spot) {
        return new StripResult.Placement(
                instance.items().get(spot.part().kind()).id(),
                scale.out(spot.y()),
                scale.out(spot.x()),
                spot.part().variants().get(spot.variant()).rotation());
    }

    private static void check(StripInstance instance, StripScale scale, Layout layout) {
        Map<Integer, Integer> copies = new HashMap<>();
        List<Layout.Spot> spots = layout.spots();
        for (int i = 0; i < spots.size(); i++) {
            copies.merge(spots.get(i).part().kind(), 1, Integer::sum);
            long[][] one = BottomLeft.corners(spots.get(i));
            must(
                    Outline.least(one[0]) >= 0
                            && Outline.greatest(one[0]) <= scale.width()
                            && Outline.least(one[1]) >= 0
                            && Outline.greatest(one[1]) <= layout.length(),
                    "a piece reaches beyond the strip");
            for (int j = 0; j < i; j++) {
                long[][] other = BottomLeft.corners(spots.get(j));
                must(!Overlap.between(one[0], one[1], other[0], other[1]), "two pieces overlap");
            }
        }
        for (int i = 0; i < instance.items().size(); i++) {
            must(copies.getOrDefault(i, 0) == instance.items().get(i).demand(), "a demand is not met");
        }
    }

    private static void must(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException("the layout does not hold: " + otherwise);
        }
    }
}
