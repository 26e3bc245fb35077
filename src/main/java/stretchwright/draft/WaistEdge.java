package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/** The leg's top edge: through centre back, side and centre front, square to both centre seams, its curvature without a jump. */
final class WaistEdge {
    /** Chords from centre to side: some 5 mm each, so that the first one is square to the centre seam. */
    private static final int CHORDS = 48;

    private WaistEdge() {}

    /**
     * A cubic spline of two pieces with given slopes at its ends.
     *
     * @param side height above the side line, x = 0
     */
    static Path through(Point front, double frontSlope, double side, Point back, double backSlope) {
        double left = -front.x();
        double right = back.x();
        double middle = (3 * (right * (side - front.y()) / left + left * (back.y() - side) / right)
                        - right * frontSlope
                        - left * backSlope)
                / (2 * (left + right));
        List<Point> points = new ArrayList<>();
        for (int i = CHORDS; i > 0; i--) {
            points.add(on(Point.ORIGIN.plus(new Point(0, side)), middle, back, backSlope, (double) i / CHORDS));
        }
        for (int i = CHORDS; i >= 0; i--) {
            points.add(on(front, frontSlope, new Point(0, side), middle, (double) i / CHORDS));
        }
        return new Path(points);
    }

    private static Point on(Point a, double slopeA, Point b, double slopeB, double t) {
        double w = b.x() - a.x();
        double r = 1 - t;
        double y = r * r * (1 + 2 * t) * a.y() + t * t * (3 - 2 * t) * b.y() + w * t * r * (r * slopeA - t * slopeB);
        return new Point(a.x() + t * w, y);
    }
}
