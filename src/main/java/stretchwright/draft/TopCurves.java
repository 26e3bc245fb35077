package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * The crotch curves and the waist edge for one height of the centre front and one fullness of the hook.
 *
 * <p>Each crotch curve runs straight (a shaped centre back: as a parabola) from the waist to the hip line and from there in one cubic of Bezier to the crotch
 * point, which it meets square to the inseam: front and back together run smoothly through, and the four corners lie
 * flat. Its handles are the same share (the fullness) of the way to where the two end tangents cross, so the curve has
 * no inflection. The waist edge is one cubic, square to both centre seams.
 */
final class TopCurves {
    /** Chords of a hook: at a radius of 60 mm they leave the curve by 0.05 mm at most. */
    private static final int HOOK_CHORDS = 36;

    /** Chords of the waist edge, and of half of it where a dart parts it: some 10 mm each on a nearly straight line. */
    private static final int WAIST_CHORDS = 40;

    /** Chords of a curved centre back between waist and hip. */
    private static final int BACK_CHORDS = 16;

    /**
     * The last bit before the crotch point, mm, runs square to the inseam, so that the four corners lie flat when sewn:
     * longer than half a usual seam allowance (docs/maths/draft.md, "The top"; common practice, no source).
     */
    private static final double SQUARE_END = 5;

    /** Of a short extension at most this share runs square, so that the hook stays a curve. */
    private static final double SQUARE_SHARE = 0.25;

    /** A centre seam rises at least half as much as it leans in: a flatter one would be a waist edge (no source). */
    private static final double LEAST_RISE_PER_LEAN = 0.5;

    /** A centre seam runs at least this far above the hip line, mm. */
    private static final double LEAST_RISE = 8;

    /** A straight centre seam, run on from the hip line to the crotch, uses at most this share of the extension. */
    private static final double MOST_OF_EXTENSION = 0.9;

    /** A curved centre back, run on straight from the hip line to the crotch, uses at most this share of the back extension. */
    private static final double LEAN_OF_EXTENSION = 0.6;

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

    /** The same with the centre back so much higher against the centre front. */
    TopCurves tilted(double more) {
        return new TopCurves(frame, hipHeight, tilt + more, front, back);
    }

    /** The lowest centre front at which the straight parts still run up more than half as far as they lean in. */
    double lowestWaist() {
        return Math.max(lowestFront(), lowestBack() - Math.min(0, tilt));
    }

    double lowestFront() {
        return lowest(frame.slantFront(), Math.abs(front.point().x() - frame.hipFront()), front);
    }

    double lowestBack() {
        // a curved back leans less where it is short
        double lean = frame.curvedBack() ? 0 : frame.slantBack();
        return Math.max(
                lowest(lean, Math.abs(back.point().x() - frame.hipBack()), back),
                hipHeight + LEAST_RISE + LEAST_RISE_PER_LEAN * Math.abs(frame.slantBack()));
    }

    /** A straight seam must rise enough for its lean, and run on from the hip line must not pass the crotch point. */
    private double lowest(double lean, double extension, Hook hook) {
        double runOn = lean * (hipHeight - hook.point().y()) / (MOST_OF_EXTENSION * extension);
        return hipHeight + Math.max(LEAST_RISE + LEAST_RISE_PER_LEAN * Math.abs(lean), runOn);
    }

    Point waistFront(double height) {
        return new Point(frame.waistFront(), height);
    }

    Point waistBack(double height) {
        return new Point(frame.hipBack() - backSlant(height), height + tilt);
    }

    /** How far the centre back leans in; a curved one only so far that the hook below it can still turn. */
    private double backSlant(double height) {
        if (!frame.curvedBack()) {
            return frame.slantBack();
        }
        double extension = back.point().x() - frame.hipBack();
        double most = LEAN_OF_EXTENSION
                * extension
                * (height + tilt - hipHeight)
                / (frame.leanAtHip() * (hipHeight - back.point().y()));
        return Math.min(frame.slantBack(), most);
    }

    /** From the waist down to the front crotch point. */
    Path frontCrotch(double height, double fullness) {
        Point hip = new Point(frame.hipFront(), hipHeight);
        Point waist = waistFront(height);
        return crotch(List.of(waist), hip, hip.minus(waist).unit(), front, -1, fullness);
    }

    /** From the waist down to the back crotch point. */
    Path backCrotch(double height, double fullness) {
        Point hip = new Point(frame.hipBack(), hipHeight);
        Point waist = waistBack(height);
        if (!frame.curvedBack()) {
            return crotch(List.of(waist), hip, hip.minus(waist).unit(), back, 1, fullness);
        }
        List<Point> upper = new ArrayList<>();
        for (int i = BACK_CHORDS; i > 0; i--) {
            double u = (double) i / BACK_CHORDS;
            double in = u * (frame.leanAtHip() - (frame.leanAtHip() - 1) * u);
            upper.add(new Point(hip.x() + in * (waist.x() - hip.x()), hip.y() + u * (waist.y() - hip.y())));
        }
        return crotch(upper, hip, lean(hip.minus(waist), frame.leanAtHip()), back, 1, fullness);
    }

    /** The direction of a chord, leaning so many times as much. */
    private static Point lean(Point chord, double times) {
        return new Point(chord.x() * times, chord.y()).unit();
    }

    double length(double height, double fullness) {
        return frontCrotch(height, fullness).length()
                + backCrotch(height, fullness).length();
    }

    private static Path crotch(List<Point> upper, Point hip, Point down, Hook hook, int side, double fullness) {
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
        List<Point> points = new ArrayList<>(upper);
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
        Point up = from.minus(new Point(frame.hipBack(), hipHeight));
        Point seamBack = frame.curvedBack() ? lean(up, 2 - frame.leanAtHip()) : up.unit();
        Point seamFront = to.minus(new Point(frame.hipFront(), hipHeight)).unit();
        return cubic(from, seamBack.left(), to, seamFront.left());
    }

    /** One cubic with the given directions at its ends, its handles a third of the way long. */
    static Path cubic(Point from, Point leaves, Point to, Point arrives) {
        double reach = from.distance(to) / 3;
        Point first = from.plus(leaves.times(reach));
        Point second = to.plus(arrives.times(-reach));
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
