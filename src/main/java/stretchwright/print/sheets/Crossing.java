package stretchwright.print.sheets;

import stretchwright.ground.Box;
import stretchwright.ground.Corners;
import stretchwright.ground.Polygon;

/** Whether lines reach into a box (Liang and Barsky's clipping, ACM Trans. Graphics 3(1), 1984). */
final class Crossing {
    private Crossing() {}

    static int count(Box box, Corners line, boolean closed) {
        int count = 0;
        for (int i = closed ? 0 : 1; i < line.count(); i++) {
            int before = i == 0 ? line.count() - 1 : i - 1;
            if (meets(box, line.x(before), line.y(before), line.x(i), line.y(i))) {
                count++;
            }
        }
        return count;
    }

    static boolean meets(Box box, Corners line, boolean closed) {
        for (int i = closed ? 0 : 1; i < line.count(); i++) {
            int before = i == 0 ? line.count() - 1 : i - 1;
            if (meets(box, line.x(before), line.y(before), line.x(i), line.y(i))) {
                return true;
            }
        }
        return false;
    }

    /** Whether any of the polygon's area lies in the box; its own box is handed in, since it is asked often. */
    static boolean meets(Box box, Polygon polygon, Box around) {
        return box.meets(around) && meets(box, Corners.of(polygon.points()));
    }

    static boolean meets(Box box, Corners polygon, Box around) {
        return box.meets(around) && meets(box, polygon);
    }

    private static boolean meets(Box box, Corners polygon) {
        return meets(box, polygon, true)
                || polygon.contains((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }

    /** A line that runs along a side of the box lies, where it is not far off, between that side and its opposite. */
    private static boolean meets(Box box, double ax, double ay, double bx, double by) {
        if (Math.max(ax, bx) < box.minX()
                || Math.min(ax, bx) > box.maxX()
                || Math.max(ay, by) < box.minY()
                || Math.min(ay, by) > box.maxY()) {
            return false;
        }
        double from = 0;
        double to = 1;
        double dx = bx - ax;
        if (dx != 0) {
            double least = (ax - box.minX()) / -dx;
            double most = (box.maxX() - ax) / dx;
            from = Math.max(from, dx > 0 ? least : most);
            to = Math.min(to, dx > 0 ? most : least);
        }
        double dy = by - ay;
        if (dy != 0) {
            double least = (ay - box.minY()) / -dy;
            double most = (box.maxY() - ay) / dy;
            from = Math.max(from, dy > 0 ? least : most);
            to = Math.min(to, dy > 0 ? most : least);
        }
        return from <= to;
    }
}
