package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/** Single cubics of Bezier. */
final class Cubic {
    /** Some 10 mm each on a nearly straight line. */
    private static final int CHORDS = 40;

    private Cubic() {}

    /** With the given directions at its ends, its handles a third of the way long. */
    static Path between(Point from, Point leaves, Point to, Point arrives) {
        double reach = from.distance(to) / 3;
        Point first = from.plus(leaves.times(reach));
        Point second = to.plus(arrives.times(-reach));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            points.add(at(from, first, second, to, (double) i / CHORDS));
        }
        return new Path(points);
    }

    static Point at(Point a, Point b, Point c, Point d, double t) {
        double s = 1 - t;
        return a.times(s * s * s)
                .plus(b.times(3 * s * s * t))
                .plus(c.times(3 * s * t * t))
                .plus(d.times(t * t * t));
    }
}
