package stretchwright.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A closed outline, counter-clockwise, the first point not repeated, in mm. Simple by contract; JTS checks it in tests. */
public record Polygon(List<Point> points) {
    public Polygon {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("a polygon needs three points, not " + points.size());
        }
        if (!(signedArea(points) > 0)) {
            throw new IllegalArgumentException("a polygon runs counter-clockwise; signed area " + signedArea(points));
        }
    }

    /** The polygon through the points, turned round if they run clockwise. */
    public static Polygon either(List<Point> points) {
        if (signedArea(points) >= 0) {
            return new Polygon(points);
        }
        List<Point> turned = new ArrayList<>(points);
        Collections.reverse(turned);
        return new Polygon(turned);
    }

    public static double signedArea(List<Point> points) {
        double twice = 0;
        int n = points.size();
        for (int i = 0; i < n; i++) {
            twice += points.get(i).cross(points.get(i + 1 == n ? 0 : i + 1));
        }
        return twice / 2;
    }

    /** Whether no two edges meet but neighbours in their common corner. */
    public boolean isSimple() {
        int n = points.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean neighbours = j == i + 1 || i == 0 && j == n - 1;
                if (!neighbours && meet(points.get(i), points.get(i + 1), points.get(j), points.get((j + 1) % n))) {
                    return false;
                }
            }
            Point next = points.get((i + 1) % n);
            Point after = points.get((i + 2) % n);
            Point back = points.get(i).minus(next);
            Point on = after.minus(next);
            boolean folds = back.cross(on) == 0 && back.x() * on.x() + back.y() * on.y() > 0;
            if (points.get(i).equals(next) || folds) {
                return false;
            }
        }
        return true;
    }

    private static boolean meet(Point a, Point b, Point c, Point d) {
        double c1 = b.minus(a).cross(c.minus(a));
        double d1 = b.minus(a).cross(d.minus(a));
        double a1 = d.minus(c).cross(a.minus(c));
        double b1 = d.minus(c).cross(b.minus(c));
        boolean boxes = Math.max(a.x(), b.x()) >= Math.min(c.x(), d.x())
                && Math.max(c.x(), d.x()) >= Math.min(a.x(), b.x())
                && Math.max(a.y(), b.y()) >= Math.min(c.y(), d.y())
                && Math.max(c.y(), d.y()) >= Math.min(a.y(), b.y());
        return boxes && c1 * d1 <= 0 && a1 * b1 <= 0;
    }

    /** Area in mm2. */
    public double area() {
        return signedArea(points);
    }

    public Box box() {
        return Box.around(points);
    }

    /** Mirrored if asked, then turned about the origin, then moved: the order of a placement in the report. */
    public Polygon placed(boolean mirror, double degrees, Point move) {
        List<Point> out = new ArrayList<>(points.size());
        for (Point p : points) {
            out.add((mirror ? p.mirrored() : p).turned(degrees).plus(move));
        }
        return either(out);
    }

    /** Inside or on the outline (even-odd rule). */
    public boolean contains(Point p) {
        return Corners.of(points).contains(p.x(), p.y());
    }
}
