package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * The places on a strip that nothing may be cut from: flaws, and what a remnant lacks of a whole rectangle.
 *
 * <p>What lies outside a remnant's outline is cut by the lines across through its corners into trapezoids, rounded
 * outwards by up to one unit. Above the outline's highest corner the strip goes on as if there were more cloth, so that a
 * lay that does not fit says by how much. Where the cloth is folded in the middle, what either half lacks, both lack.
 */
final class Taken {
    private static final double NEAR = 1e-6;

    private Taken() {}

    static List<Shape> on(Fabric fabric, Lay.Method method, long margin) {
        ClothShape cloth = fabric.shape();
        if (cloth.equals(ClothShape.WHOLE)) {
            return List.of();
        }
        if (method != Lay.Method.OPEN && method != Lay.Method.FOLDED) {
            throw new IllegalArgumentException("flaws and remnants are laid open or folded, not " + method.word());
        }
        long width = Spread.whole(fabric);
        List<Polygon> places = new ArrayList<>(cloth.flaws());
        cloth.outline().ifPresent(o -> places.addAll(outside(o, Grid.mm(width))));
        List<Shape> out = new ArrayList<>();
        for (Polygon place : places) {
            if (method == Lay.Method.OPEN) {
                out.add(moved(place, false, 0, margin));
            } else {
                out.add(moved(place, false, -Grid.mm(width / 2), margin));
                out.add(moved(place, true, Grid.mm(width - width / 2), margin));
            }
        }
        return out;
    }

    private static Shape moved(Polygon place, boolean mirror, double x, long margin) {
        double m = Grid.mm(margin);
        return Shape.of(place.placed(mirror, 0, new Point(x + m, m)));
    }

    /** Trapezoids that with the outline fill the rectangle of this width from y = 0 to the outline's top, and stand over its sides. */
    static List<Polygon> outside(Polygon outline, double width) {
        double[] heights = outline.points().stream()
                .mapToDouble(Point::y)
                .sorted()
                .distinct()
                .toArray();
        List<Polygon> out = new ArrayList<>();
        double beyond = Math.max(width, outline.box().maxX()) + 1;
        if (heights[0] > 0) {
            out.add(trapezoid(0, heights[0], new double[] {-1, -1}, new double[] {beyond, beyond}));
        }
        for (int i = 0; i + 1 < heights.length; i++) {
            double y0 = heights[i];
            double y1 = heights[i + 1];
            List<double[]> sides = sides(outline, y0, y1);
            double[] left = {-1, -1};
            for (int k = 0; k < sides.size(); k += 2) {
                out.add(trapezoid(y0, y1, left, sides.get(k)));
                left = sides.get(k + 1);
            }
            out.add(trapezoid(y0, y1, left, new double[] {beyond, beyond}));
        }
        return out.stream().filter(p -> p.box().height() > 0).toList();
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

    /** Between two sides, each given by its x at the lower and the upper height, rounded outwards. */
    private static Polygon trapezoid(double y0, double y1, double[] left, double[] right) {
        double[] l = Arrays.stream(left)
                .map(x -> Math.floor(x / Grid.STEP + NEAR) * Grid.STEP)
                .toArray();
        double[] r = Arrays.stream(right)
                .map(x -> Math.ceil(x / Grid.STEP - NEAR) * Grid.STEP)
                .toArray();
        return Polygon.either(
                List.of(new Point(l[0], y0), new Point(r[0], y0), new Point(r[1], y1), new Point(l[1], y1)));
    }
}
