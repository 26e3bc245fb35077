package stretchwright.web.draw;

import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Point;

/**
 * The foot from outside, below the ankle level: the heel stands behind the leg by a share of the foot, the instep falls
 * to the toes. Proportions measured from feet drawn at the standard length of 243 mm (free drawing, no source).
 */
final class SideFoot {
    private final double length;
    private final double bone;
    private final double ankle;
    private final double front;
    private final double back;

    SideFoot(Body body, double front, double back) {
        this.length = body.mm(Measure.FOOT_LENGTH);
        this.bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        this.ankle = body.mm(Measure.ANKLE_HEIGHT);
        this.front = front;
        this.back = back;
    }

    double heel() {
        return back + 0.068 * length;
    }

    double toe() {
        return heel() - length;
    }

    double bone() {
        return bone;
    }

    double length() {
        return length;
    }

    /** On the instep: so much of the way from the shin to the toe, so many bone heights above the floor. */
    private Point on(double share, double high) {
        return new Point(front + share * (toe() - front), high * bone);
    }

    /** Where the foot bends in front. */
    Point bend() {
        return on(0.10, 1).plus(new Point(0, 0.50 * (ankle - bone)));
    }

    /** The same without the ends that are stretched where the toes are pointed. */
    List<Point> pointed() {
        List<Point> all = line();
        return all.subList(1, all.size() - 2);
    }

    Point heelTip() {
        return new Point(heel() - 0.012 * length, 0.10 * bone);
    }

    /** From the shin round toes and heel to the back of the leg, both ends left out. */
    List<Point> line() {
        return List.of(
                on(0.035, 1).plus(new Point(0, 0.74 * (ankle - bone))),
                bend(),
                on(0.19, 1.10),
                on(0.30, 0.97),
                on(0.46, 0.77),
                on(0.64, 0.56),
                on(0.80, 0.40),
                on(0.92, 0.33),
                on(0.985, 0.23),
                on(1, 0.11),
                on(0.965, 0.015),
                on(0.88, 0),
                on(0.80, 0.02),
                on(0.66, 0),
                on(0.42, 0.02),
                new Point(heel() - 0.36 * length, 0.05 * bone),
                new Point(heel() - 0.20 * length, 0),
                new Point(heel() - 0.06 * length, 0),
                new Point(heel() - 0.012 * length, 0.10 * bone),
                new Point(heel(), 0.36 * bone),
                new Point(heel() - 0.012 * length, 0.70 * bone),
                new Point(back + 0.25 * (heel() - back), 1.06 * bone),
                new Point(back - 0.002 * length, bone + 0.5 * (ankle - bone)));
    }

    /** x of its front at a height between floor and ankle: instep and toes. */
    double frontAt(double height) {
        return across(line().subList(0, 10), height);
    }

    double backAt(double height) {
        List<Point> all = line();
        return across(all.subList(all.size() - 6, all.size()), height);
    }

    private static double across(List<Point> run, double height) {
        for (int i = 1; i < run.size(); i++) {
            Point a = run.get(i - 1);
            Point b = run.get(i);
            if ((a.y() - height) * (b.y() - height) <= 0 && a.y() != b.y()) {
                return a.towards(b, (height - a.y()) / (b.y() - a.y())).x();
            }
        }
        Point first = run.get(0);
        Point last = run.get(run.size() - 1);
        return Math.abs(first.y() - height) < Math.abs(last.y() - height) ? first.x() : last.x();
    }

    void details(Pen pen) {
        double r = 0.045 * length;
        pen.curve(
                Look.THIN,
                new Point(-r, bone - 0.3 * r),
                new Point(-0.4 * r, bone + 0.9 * r),
                new Point(0.7 * r, bone + 0.7 * r),
                new Point(r, bone - 0.3 * r));
        pen.curve(Look.THIN, on(0.86, 0.19), on(0.80, 0.16), on(0.775, 0.04));
        pen.curve(Look.THIN, on(0.985, 0.22), on(0.945, 0.23), on(0.925, 0.17));
    }
}
