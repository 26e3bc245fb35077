package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** Where an outline lies otherwise than another one. */
final class Moved {
    /** Nearer they are one line on the screen, mm. */
    private static final double SAME = 1.5;

    private Moved() {}

    /** The runs of the one that lie away from the other; a point at each end joins them to it. */
    static List<List<Point>> runs(Polygon before, Polygon now) {
        List<Point> points = before.points();
        int n = points.size();
        boolean[] away = new boolean[n];
        int first = -1;
        for (int i = 0; i < n; i++) {
            away[i] = distance(points.get(i), now.points()) > SAME;
            if (!away[i]) {
                first = i;
            }
        }
        if (first < 0) {
            return List.of(closed(points));
        }
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

    private static double distance(Point p, List<Point> line) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < line.size(); i++) {
            least = Math.min(least, distance(p, line.get(i), line.get((i + 1) % line.size())));
        }
        return least;
    }

    private static double distance(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length = dx * dx + dy * dy;
        double t = length == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length;
        double s = Math.max(0, Math.min(1, t));
        return Math.hypot(p.x() - a.x() - s * dx, p.y() - a.y() - s * dy);
    }
}
