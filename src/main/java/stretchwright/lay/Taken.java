package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Shape;

/**
 * The places on a strip that nothing may be cut from: flaws, and what a remnant lacks of a whole rectangle.
 *
 * <p>What lies outside a remnant's outline is cut by the lines across through its corners into trapezoids, rounded
 * outwards by up to one unit. Above the outline's highest corner the strip goes on as if there were more cloth, so that a
 * lay that does not fit says by how much. Where the cloth is folded lengthwise, its left part lies below, and what either
 * layer lacks, both lack.
 */
final class Taken {
    private static final double NEAR = 1e-6;

    private Taken() {}

    /** @param doubled units that lie double, where the cloth is folded off the middle */
    static List<Shape> on(Fabric fabric, Lay.Method method, long doubled, long margin) {
        ClothShape cloth = fabric.roll().shape();
        if (cloth.whole()) {
            return List.of();
        }
        long width = Spread.whole(fabric);
        return switch (method) {
            case OPEN -> moved(places(cloth, width, -1), false, 0, margin);
            case FOLDED ->
                both(
                        moved(places(cloth, width, -1), false, -(width / 2), margin),
                        moved(places(cloth, width, -1), true, width - width / 2, margin));
            // what stood over the left side would lie on the single layer
            case FOLDED_OFF_THE_MIDDLE ->
                both(
                        moved(places(cloth, width, -1), false, -doubled, margin),
                        moved(places(cloth, width, 0), true, doubled, margin));
            case FOLDED_CROSSWISE, PART_FOLDED ->
                throw new IllegalArgumentException("flaws and remnants are not laid " + method.word());
        };
    }

    private static List<Polygon> places(ClothShape cloth, long width, double left) {
        List<Polygon> out = new ArrayList<>(cloth.flaws());
        cloth.outline().ifPresent(o -> out.addAll(outside(o, Grid.mm(width), left)));
        return out;
    }

    private static List<Shape> both(List<Shape> upper, List<Shape> lower) {
        return Stream.concat(upper.stream(), lower.stream()).toList();
    }

    private static List<Shape> moved(List<Polygon> places, boolean mirror, long x, long margin) {
        Point by = new Point(Grid.mm(x) + Grid.mm(margin), Grid.mm(margin));
        return places.stream().map(p -> Shape.of(p.placed(mirror, 0, by))).toList();
    }

    /**
     * Trapezoids that with the outline fill the rectangle of this width from y = 0 to the outline's top, and stand over its
     * right side; from this x on, 0 or left of it.
     */
    static List<Polygon> outside(Polygon outline, double width, double from) {
        double[] heights = outline.points().stream()
                .mapToDouble(Point::y)
                .sorted()
                .distinct()
                .toArray();
        List<Polygon> out = new ArrayList<>();
        double beyond = Math.max(width, outline.box().maxX()) + 1;
        if (heights[0] > 0) {
            out.addAll(trapezoid(0, heights[0], new double[] {from, from}, new double[] {beyond, beyond}));
        }
        for (int i = 0; i + 1 < heights.length; i++) {
            double y0 = heights[i];
            double y1 = heights[i + 1];
            List<double[]> sides = sides(outline, y0, y1);
            double[] left = {from, from};
            for (int k = 0; k < sides.size(); k += 2) {
                out.addAll(trapezoid(y0, y1, left, sides.get(k)));
                left = sides.get(k + 1);
            }
            out.addAll(trapezoid(y0, y1, left, new double[] {beyond, beyond}));
        }
        return out;
    }

    /** The x at both heights of the edges that span them, from left to right. */
    private static List<double[]> sides(Polygon outline, double y0, double y1) {
        List<double[]> out = new ArrayList<>();
        List<Point> points = outline.points();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            Point low = a.y() < b.y() ? a : b;
            Point high = a.y() < b.y() ? b : a;
            if (low.y() <= y0 && high.y() >= y1) {
                out.add(new double[] {at(low, high, y0), at(low, high, y1)});
            }
        }
        out.sort((one, other) -> Double.compare(one[0] + one[1], other[0] + other[1]));
        return out;
    }

    private static double at(Point low, Point high, double y) {
        return low.x() + (high.x() - low.x()) * (y - low.y()) / (high.y() - low.y());
    }

    /** Between two sides, each given by its x at the lower and the upper height, rounded outwards; none where they are one. */
    private static List<Polygon> trapezoid(double y0, double y1, double[] left, double[] right) {
        double[] l = Arrays.stream(left)
                .map(x -> Math.floor(x / Grid.STEP + NEAR) * Grid.STEP)
                .toArray();
        double[] r = Arrays.stream(right)
                .map(x -> Math.ceil(x / Grid.STEP - NEAR) * Grid.STEP)
                .toArray();
        return r[0] - l[0] + r[1] - l[1] > 0
                ? List.of(Polygon.either(
                        List.of(new Point(l[0], y0), new Point(r[0], y0), new Point(r[1], y1), new Point(l[1], y1))))
                : List.of();
    }
}
