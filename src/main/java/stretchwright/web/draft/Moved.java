package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** Where an outline lies otherwise than another one. */
final class Moved {
    /** Nearer they are one line on the screen, mm. */
    private static final double SAME = 1.5;

    private final List<Point> line;

    /** Which part of the line was near at last: the next point mostly lies at it, or at the one after. */
    private int near;

    private Moved(Polygon now) {
        this.line = now.points();
    }

    /** The runs of the one that lie away from the other; a point at each end joins them to it. */
    static List<List<Point>> runs(Polygon before, Polygon now) {
        Moved moved = new Moved(now);
        List<Point> points = before.points();
        int n = points.size();
        boolean[] away = new boolean[n];
        int first = -1;
        for (int i = 0; i < n; i++) {
            away[i] = moved.isAway(points.get(i));
            if (!away[i]) {
                first = i;
            }
        }
        return first < 0 ? List.of(closed(points)) : runs(points, away, first);
    }

    private static List<List<Point>> runs(List<Point> points, boolean[] away, int first) {
        int n = points.size();
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (int k = 1; k <= n; k++) {
            int i = (first + k) % n;
            if (away[i]) {
                if (run.isEmpty()) {
                    run.add(points.get((i - 1 + n) % n));
                }
                run.add(points.get(i));
            } else if (!run.isEmpty()) {
                run.add(points.get(i));
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        return runs;
    }

    private static List<Point> closed(List<Point> points) {
        List<Point> out = new ArrayList<>(points);
        out.add(points.get(0));
        return out;
    }

    private boolean isAway(Point p) {
        for (int k = 0; k < line.size(); k++) {
            int i = (near + k) % line.size();
            if (squared(p, line.get(i), line.get((i + 1) % line.size())) <= SAME * SAME) {
                near = i;
                return false;
            }
        }
        return true;
    }

    /** Of the distance to the part between two points. */
    private static double squared(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length = dx * dx + dy * dy;
        double t = length == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length;
        double s = Math.max(0, Math.min(1, t));
        double x = p.x() - a.x() - s * dx;
        double y = p.y() - a.y() - s * dy;
        return x * x + y * y;
    }
}
