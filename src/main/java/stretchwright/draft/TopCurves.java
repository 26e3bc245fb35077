package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * The crotch curves and the waist edge for one height of the centre front and one fullness of the hook.
 *
 * <p>Each crotch curve runs straight from the waist to the hip line and from there in one cubic of Bezier to the crotch
 * point, which it meets square to the inseam: front and back together run smoothly through, and the four corners lie
 * flat. Its handles are the same share (the fullness) of the way to where the two end tangents cross, so the curve has
 * no inflection. The waist edge is one cubic, square to both centre seams.
 */
final class TopCurves {
    private static final int HOOK_CHORDS = 36;
    private static final int WAIST_CHORDS = 40;
    /** The last bit before the crotch point runs square to the inseam, so that the four corners lie flat when sewn. */
    private static final double SQUARE_END = 5;

    private static final double SQUARE_SHARE = 0.25;
    private static final double LEAST_RISE_PER_LEAN = 0.5;

    private final Frame frame;
    private final double hipHeight;
    private final double tilt;
    private final Hook front;
    private final Hook back;

    /** Where a crotch curve ends and how the inseam runs there. */
    record Hook(Point point, double flare) {}

    TopCurves(Frame frame, double hipHeight, double tilt, Hook front, Hook back) {
        this.frame = frame;
        this.hipHeight = hipHeight;
        this.tilt = tilt;
        this.front = front;
        this.back = back;
    }

    /** The lowest centre front at which the straight parts still run up more than half as far as they lean in. */
    double lowestWaist() {
        return Math.max(lowestFront(), lowestBack());
    }

    double lowestFront() {
        return hipHeight + 8 + LEAST_RISE_PER_LEAN * Math.abs(frame.slantFront());
    }

    double lowestBack() {
        return hipHeight + 8 + LEAST_RISE_PER_LEAN * Math.abs(frame.slantBack());
    }

    Point waistFront(double height) {
        return new Point(frame.waistFront(), height);
    }

    Point waistBack(double height) {
        return new Point(frame.waistBack(), height + tilt);
    }

    /** From the waist down to the front crotch point. */
    Path frontCrotch(double height, double fullness) {
        return crotch(waistFront(height), new Point(frame.hipFront(), hipHeight), front, -1, fullness);
    }

    /** From the waist down to the back crotch point. */
    Path backCrotch(double height, double fullness) {
        return crotch(waistBack(height), new Point(frame.hipBack(), hipHeight), back, 1, fullness);
    }

    double length(double height, double fullness) {
        return frontCrotch(height, fullness).length()
                + backCrotch(height, fullness).length();
    }

    private static Path crotch(Point waist, Point hip, Hook hook, int side, double fullness) {
        Point down = hip.minus(waist).unit();
        // square to an inseam that runs (side x flare, 1) upwards
        Point arrive = new Point(side, -hook.flare()).unit();
        double extension = Math.abs(hook.point().x() - hip.x());
        Point landing = hook.point().minus(arrive.times(Math.min(SQUARE_END, SQUARE_SHARE * extension)));
        Point gap = landing.minus(hip);
        double turn = down.cross(arrive);
        double ahead = gap.cross(arrive) / turn;
        double behind = gap.cross(down) / turn;
        Point first = hip.plus(down.times(fullness * ahead));
        Point second = landing.plus(arrive.times(fullness * behind));
        List<Point> points = new ArrayList<>();
        points.add(waist);
        for (int i = 0; i <= HOOK_CHORDS; i++) {
            points.add(bezier(hip, first, second, landing, (double) i / HOOK_CHORDS));
        }
        points.add(hook.point());
        return new Path(points);
    }

    /** From centre back to centre front. */
    Path waistEdge(double height) {
        Point from = waistBack(height);
        Point to = waistFront(height);
        Point seamBack = from.minus(new Point(frame.hipBack(), hipHeight)).unit();
        Point seamFront = to.minus(new Point(frame.hipFront(), hipHeight)).unit();
        double reach = from.distance(to) / 3;
        Point first = from.plus(seamBack.left().times(reach));
        Point second = to.plus(seamFront.left().times(-reach));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= WAIST_CHORDS; i++) {
            points.add(bezier(from, first, second, to, (double) i / WAIST_CHORDS));
        }
        return new Path(points);
    }

    /** Height of the waist edge above the side line, x = 0. */
    double sideHeight(double height) {
        List<Point> edge = waistEdge(height).points();
        for (int i = 1; i < edge.size(); i++) {
            Point a = edge.get(i - 1);
            Point b = edge.get(i);
            if (b.x() <= 0) {
                return a.towards(b, a.x() / (a.x() - b.x())).y();
            }
        }
        throw new IllegalStateException("the waist edge does not cross the side line");
    }

    static Point bezier(Point a, Point b, Point c, Point d, double t) {
        double s = 1 - t;
        return a.times(s * s * s)
                .plus(b.times(3 * s * s * t))
                .plus(c.times(3 * s * t * t))
                .plus(d.times(t * t * t));
    }
}
