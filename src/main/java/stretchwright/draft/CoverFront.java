package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Roots;

/**
 * The front edge of a boot cover: one cubic of Bezier, upright at both ends, along the tongue, over the instep and down
 * the toe box. How far it hollows is solved so that the way from the heel's corner (the origin) to its nearest point is
 * half the loop round heel and instep.
 */
final class CoverFront {
    /** Handles as shares of the height: of tongue and toe box where it hollows least, of the tongue where it hollows most [C]. */
    private static final double TONGUE_LEAST = 0.35;

    private static final double TOE_LEAST = 0.65;
    private static final double TONGUE_MOST = 0.95;

    /** At toe and tongue the edge bends no sharper than with this radius, mm: a shorter handle would draw a beak [C]. */
    private static final double END_RADIUS = 40;

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
        double round = Math.min(TONGUE_MOST * height, roundEnd(top.x() - toe.x()));
        double least = Math.max(TONGUE_LEAST * height, round);
        double tongue = least + hollow * (TONGUE_MOST * height - least);
        double most = Math.max(TOE_LEAST * height, round);
        double box = most - hollow * (most - round);
        Point one = new Point(top.x(), top.y() - tongue);
        Point two = new Point(toe.x(), toe.y() + box);
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

    /**
     * The handle with which an upright end bends with {@link #END_RADIUS}: a cubic's curvature at its end is two thirds of how far
     * the other end's handle lies off the tangent there, divided by the square of its own handle.
     */
    private static double roundEnd(double off) {
        return Math.sqrt(END_RADIUS * Math.max(0, off) * 2 / 3);
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
