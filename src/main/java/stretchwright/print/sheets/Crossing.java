package stretchwright.print.sheets;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** Whether lines reach into a box (Liang and Barsky's clipping, ACM Trans. Graphics 3(1), 1984). */
final class Crossing {
    private Crossing() {}

    static int count(Box box, List<Point> points, boolean closed) {
        int count = 0;
        int segments = closed ? points.size() : points.size() - 1;
        for (int i = 0; i < segments; i++) {
            if (meets(box, points.get(i), points.get((i + 1) % points.size()))) {
                count++;
            }
        }
        return count;
    }

    /** Whether any of the polygon's area lies in the box; its own box is handed in, since it is asked often. */
    static boolean meets(Box box, Polygon polygon, Box around) {
        return box.meets(around) && (any(box, polygon.points()) || polygon.contains(box.centre()));
    }

    private static boolean any(Box box, List<Point> ring) {
        Point from = ring.get(ring.size() - 1);
        for (Point to : ring) {
            if (meets(box, from, to)) {
                return true;
            }
            from = to;
        }
        return false;
    }

    static boolean meets(Box box, Point a, Point b) {
        if (Math.max(a.x(), b.x()) < box.minX()
                || Math.min(a.x(), b.x()) > box.maxX()
                || Math.max(a.y(), b.y()) < box.minY()
                || Math.min(a.y(), b.y()) > box.maxY()) {
            return false;
        }
        double[] share = {0, 1};
        Point d = b.minus(a);
        return clip(-d.x(), a.x() - box.minX(), share)
                && clip(d.x(), box.maxX() - a.x(), share)
                && clip(-d.y(), a.y() - box.minY(), share)
                && clip(d.y(), box.maxY() - a.y(), share);
    }

    private static boolean clip(double p, double q, double[] share) {
        if (p == 0) {
            return q >= 0;
        }
        double r = q / p;
        if (p < 0) {
            share[0] = Math.max(share[0], r);
        } else {
            share[1] = Math.min(share[1], r);
        }
        return share[0] <= share[1];
    }
}
