package stretchwright.lay;

import java.util.ArrayList;
import java.util.HashMap;
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
 * <p>In: the instance, a seed, a budget in work, and when to stop. Out: a layout in which no two pieces overlap, all
 * lie on the strip and every copy is there (checked exactly in whole units before it is returned), or findings where
 * an item is higher than the strip. The same instance, seed and work give the same layout; a stop by the clock is
 * replayed by the work it reached. Method: bottom-left over changing orders (Orders); docs/maths/lay.md.
 */
public final class StripLay {
    private StripLay() {}

    /**
     * @param work positions and pairs of outlines to try at most; the order under way is finished
     * @param stop asked between orders; the first order is always laid
     * @param better told of each layout shorter than all before, as it is found
     */
    public static Optional<StripResult> lay(
            StripInstance instance,
            long seed,
            long work,
            BooleanSupplier stop,
            Consumer<StripResult.Step> better,
            Findings findings) {
        StripScale scale = StripScale.of(instance);
        List<Part> parts = new ArrayList<>();
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
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(search(instance, scale, parts, seed, work, stop, better));
    }

    private static StripResult search(
            StripInstance instance,
            StripScale scale,
            List<Part> parts,
            long seed,
            long work,
            BooleanSupplier stop,
            Consumer<StripResult.Step> better) {
        List<StripResult.Step> history = new ArrayList<>();
        Orders[] orders = new Orders[1];
        orders[0] = new Orders(scale.width(), false, 1, work, stop, layout -> {
            StripResult.Step step = new StripResult.Step(orders[0].work(), scale.out(layout.length()));
            history.add(step);
            better.accept(step);
        });
        Layout best = orders[0]
                .search(parts, RandomStream.of(seed, "strip lay"))
                .get(0)
                .layout();
        check(instance, scale, best);
        double length = scale.out(best.length());
        return new StripResult(
                best.spots().stream().map(s -> placement(instance, scale, s)).toList(),
                length,
                instance.area() / (instance.stripHeight() * length),
                orders[0].work(),
                history);
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
