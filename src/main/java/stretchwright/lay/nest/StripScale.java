package stretchwright.lay.nest;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * Between the units of an instance and whole units: a power of ten, so that decimal coordinates stay exact.
 *
 * <p>The strip's height comes to between 10^5 and 10^6 units, more only where the coordinates have more decimals
 * than that and stay small enough for the exact checks. Here the cloth's convention holds: x across the strip, y along
 * it; the instance's x and y are exchanged on the way in and out.
 *
 * @param whole whether all coordinates are whole units; others are searched with by outlines that contain them
 */
record StripScale(double factor, long width, boolean whole) {
    private static final double AIM = 1e6;
    /** Largest height in units: leaves room for a layout 25 times as long as it is high. */
    private static final double LARGEST = Shape.LARGEST / 26.0;

    /** Rounding moves a corner by at most 0.71 units. */
    private static final double ROUNDING = 1;

    static StripScale of(StripInstance instance) {
        double factor = Math.rint(Math.pow(10, Math.floor(Math.log10(AIM / instance.stripHeight()))));
        factor = factor >= 1 ? factor : 1;
        while (!whole(instance, factor) && instance.stripHeight() * factor * 10 <= LARGEST) {
            factor *= 10;
        }
        return new StripScale(
                factor, (long) Math.floor(instance.stripHeight() * factor + 1e-6), whole(instance, factor));
    }

    private static boolean whole(StripInstance instance, double factor) {
        return instance.items().stream()
                .flatMap(i -> i.polygon().points().stream())
                .allMatch(p -> whole(p.x() * factor) && whole(p.y() * factor));
    }

    private static boolean whole(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-6;
    }

    /** The item in all rotations in which it is not higher than the strip. */
    Part part(int kind, StripInstance.Item item, List<Double> rotations) {
        return new Part(
                kind,
                rotations.stream()
                        .map(r -> Part.Variant.of(r, shape(item, r), 0))
                        .filter(v -> v.exact().width() <= width)
                        .toList(),
                Across.between(0, width));
    }

    private Shape shape(StripInstance.Item item, double rotation) {
        List<Point> turned = item.polygon().points().stream()
                .map(p -> p.turned(rotation).times(factor))
                .toList();
        List<Point> around =
                whole ? turned : Grown.outward(Polygon.either(turned), ROUNDING).points();
        return Shape.of(
                around.stream().mapToLong(p -> Math.round(p.y())).toArray(),
                around.stream().mapToLong(p -> Math.round(p.x())).toArray());
    }

    /** A layout that went out, as places of these parts, which stand in the order of the items. */
    Layout layout(List<Part> parts, StripInstance instance, StripResult from) {
        Map<String, Deque<StripResult.Placement>> left = new HashMap<>();
        from.placements()
                .forEach(p ->
                        left.computeIfAbsent(p.item(), id -> new ArrayDeque<>()).add(p));
        List<Layout.Spot> spots = new ArrayList<>();
        for (Part part : parts) {
            StripResult.Placement placed = left.getOrDefault(
                            instance.items().get(part.kind()).id(), new ArrayDeque<>())
                    .remove();
            int v = 0;
            while (part.variants().get(v).rotation() != placed.rotation()) {
                v++;
            }
            long along = in(placed.x());
            spots.add(new Layout.Spot(
                    part,
                    v,
                    in(placed.y()),
                    along,
                    along + part.variants().get(v).exact().maxY));
        }
        return new Layout(spots, in(from.length()));
    }

    private long in(double value) {
        return Math.round(value * factor);
    }

    double out(long units) {
        return units / factor;
    }
}
