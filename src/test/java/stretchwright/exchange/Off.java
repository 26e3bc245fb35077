package stretchwright.exchange;

import java.util.List;
import stretchwright.ground.Point;

/** How far what was read lies off what was drafted, in mm. */
final class Off {
    private Off() {}

    /** Corner by corner; as many on both sides. */
    static double inOrder(List<Point> read, List<Point> drafted) {
        if (read.size() != drafted.size()) {
            throw new AssertionError(read.size() + " corners where there are " + drafted.size());
        }
        double worst = 0;
        for (int i = 0; i < read.size(); i++) {
            worst = Math.max(worst, read.get(i).distance(drafted.get(i)));
        }
        return worst;
    }

    /** Each corner from the nearest of the others, both ways. */
    static double asSets(List<Point> a, List<Point> b) {
        return Math.max(farthest(a, b), farthest(b, a));
    }

    private static double farthest(List<Point> from, List<Point> to) {
        double worst = 0;
        for (Point p : from) {
            worst = Math.max(worst, to.stream().mapToDouble(p::distance).min().orElse(Double.MAX_VALUE));
        }
        return worst;
    }

    /** From a closed outline. */
    static double line(Point p, List<Point> outline) {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point way = outline.get((i + 1) % outline.size()).minus(a);
            double share = way.dot(way) == 0 ? 0 : p.minus(a).dot(way) / way.dot(way);
            best = Math.min(best, p.distance(a.plus(way.times(Math.max(0, Math.min(1, share))))));
        }
        return best;
    }
}
