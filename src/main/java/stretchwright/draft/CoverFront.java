package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * The front edge of a boot cover: one cubic of Bezier, upright at both ends, along the tongue, over the instep and down
 * the toe box. How far it hollows is solved so that the way from the heel's corner (the origin) to its nearest point is
 * half the loop round heel and instep.
 */
final class CoverFront {
    /** Handles as shares of the height, tongue and toe box, where it hollows least and most [C]. */
    private static final double TONGUE_LEAST = 0.35;

    private static final double TONGUE_MOST = 0.85;
    private static final double TOE_LEAST = 0.65;
    private static final double TOE_MOST = 0.15;

    /** Chords of the curve. */
    private static final int PARTS = 40;

    private CoverFront() {}

    static Path between(Point top, Point toe, double heelToInstep) {
        double hollow = Roots.between(h -> nearest(curve(top, toe, h), Point.ORIGIN) - heelToInstep, 0, 1)
                .orElse(nearest(curve(top, toe, 1), Point.ORIGIN) > heelToInstep ? 1 : 0);
        return curve(top, toe, hollow);
    }

    private static Path curve(Point top, Point toe, double hollow) {
        double height = top.y() - toe.y();
        double tongue = TONGUE_LEAST + hollow * (TONGUE_MOST - TONGUE_LEAST);
        double box = TOE_LEAST + hollow * (TOE_MOST - TOE_LEAST);
        Point one = new Point(top.x(), top.y() - tongue * height);
        Point two = new Point(toe.x(), toe.y() + box * height);
        List<Point> points = new ArrayList<>();
        points.add(top);
        for (int i = 1; i < PARTS; i++) {
            // closer together towards the ends, so that the first and last chord are upright too
            double t = (1 - StrictMath.cos(Math.PI * i / PARTS)) / 2;
            double u = 1 - t;
            points.add(top.times(u * u * u)
                    .plus(one.times(3 * u * u * t))
                    .plus(two.times(3 * u * t * t))
                    .plus(toe.times(t * t * t)));
        }
        points.add(toe);
        return new Path(points);
    }

    /** Distance from a point to the nearest place on a path, mm. */
    static double nearest(Path path, Point from) {
        double least = Double.POSITIVE_INFINITY;
        List<Point> points = path.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point d = points.get(i).minus(a);
            double share = d.dot(d) == 0 ? 0 : from.minus(a).dot(d) / d.dot(d);
            least = Math.min(least, from.distance(a.plus(d.times(Math.max(0, Math.min(1, share))))));
        }
        return least;
    }
}
