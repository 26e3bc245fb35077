package stretchwright.web.draw;

import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;

/**
 * Trunk, arm and head from the side, for the stature: only that and the waist are measured, all else is the usual
 * proportion of drawings (adults seven and a half heads tall, children six and a half; no source).
 */
final class UpperSide {
    private final SideFigure lower;
    private final double tall;
    private final double head;
    private final double chin;
    private final boolean woman;

    UpperSide(SideFigure lower) {
        Body body = lower.body();
        this.lower = lower;
        this.tall = body.mm(Measure.STATURE);
        this.head = tall / (body.figure() == Figure.CHILD ? 6.5 : 7.5);
        this.chin = tall - head;
        this.woman = body.figure() == Figure.WOMAN;
    }

    private double up(double share) {
        return lower.top() + (chin - lower.top()) * share;
    }

    private Point face(double forward, double share) {
        return new Point(-forward * head - 0.012 * tall, chin + share * head);
    }

    private double chest() {
        return Math.max((woman ? 0.088 : 0.080) * tall, -0.98 * lower.front(lower.top()));
    }

    private double shoulders() {
        return Math.max(0.064 * tall, 0.92 * lower.back(lower.top()));
    }

    void draw(Pen pen) {
        pen.runs(Look.BODY, List.of(joined(front(), lower.outline(), back())));
        pen.curve(Look.THIN, face(0.31, 0.47), face(0.26, 0.485), face(0.22, 0.46));
        pen.curve(Look.THIN, face(-0.06, 0.50), face(-0.16, 0.54), face(-0.17, 0.40), face(-0.08, 0.30));
        arm(pen);
    }

    /** Down from the crown over face and breast. */
    private List<Point> front() {
        return List.of(
                face(-0.02, 1),
                face(0.22, 0.96),
                face(0.34, 0.80),
                face(0.365, 0.60),
                face(0.35, 0.50),
                face(0.44, 0.33),
                face(0.36, 0.28),
                face(0.375, 0.20),
                face(0.345, 0.14),
                face(0.355, 0.04),
                face(0.29, -0.01),
                face(0.13, 0.02),
                face(0.09, -0.14),
                new Point(-0.034 * tall, up(0.86)),
                new Point(-0.74 * chest(), up(0.69)),
                new Point(-0.97 * chest(), up(woman ? 0.55 : 0.58)),
                new Point(-(woman ? 1 : 0.98) * chest(), up(woman ? 0.46 : 0.42)),
                new Point(-(woman ? 0.86 : 0.94) * chest(), up(woman ? 0.34 : 0.26)));
    }

    /** Up the back to the crown. */
    private List<Point> back() {
        return List.of(
                new Point(0.98 * shoulders(), up(0.24)),
                new Point(1.10 * shoulders(), up(0.52)),
                new Point(0.88 * shoulders(), up(0.78)),
                new Point(0.036 * tall, up(0.94)),
                face(-0.27, 0.10),
                face(-0.33, 0.22),
                face(-0.45, 0.48),
                face(-0.42, 0.76),
                face(-0.22, 0.96),
                face(-0.02, 1));
    }

    private static List<Point> joined(List<Point> front, List<Point> lower, List<Point> back) {
        List<Point> all = new java.util.ArrayList<>(front);
        all.addAll(lower);
        all.addAll(back);
        return all;
    }

    private void arm(Pen pen) {
        double wide = 0.024 * tall;
        double shoulder = up(0.80);
        double wrist = lower.body().mm(Measure.CROTCH_HEIGHT) + 0.02 * tall;
        double elbow = (shoulder + wrist) / 2 + 0.01 * tall;
        pen.shape(
                Look.BODY,
                new Point(0.004 * tall, shoulder),
                new Point(-1.15 * wide, shoulder - 1.5 * wide),
                new Point(-0.95 * wide, elbow),
                new Point(-1.25 * wide, (elbow + wrist) / 2),
                new Point(-0.95 * wide, wrist),
                new Point(-1.45 * wide, wrist - 1.2 * wide),
                new Point(-1.15 * wide, wrist - 3.4 * wide),
                new Point(-0.2 * wide, wrist - 3.8 * wide),
                new Point(0.45 * wide, wrist - 1.6 * wide),
                new Point(0.30 * wide, wrist),
                new Point(0.65 * wide, (elbow + wrist) / 2 + wide),
                new Point(1.0 * wide, elbow),
                new Point(1.25 * wide, shoulder - 2 * wide));
    }
}
