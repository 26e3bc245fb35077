package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.ground.MonotoneCurve;
import stretchwright.ground.Point;

/**
 * A body below the ribs from the front, in mm, its middle over 0 and both legs alike: thighs touch at the crotch, the legs
 * draw together a little towards the ankles; the outside of a calf is fullest higher than the inside (free drawing, no
 * source). At every measured level a section is as broad as its girth asks.
 */
final class FrontFigure {
    private static final double GAP = 1.5;

    private final Body body;
    private final double apart;
    private final Depths depths;
    private final double[] outerHeights;
    private final MonotoneCurve outline;
    private final MonotoneCurve inside;

    /** @param apart how far each foot is set aside further than usual, mm */
    FrontFigure(Body body, double apart) {
        this.body = body;
        this.apart = apart;
        this.depths = new Depths(body);
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double waist = body.mm(Measure.WAIST_HEIGHT);
        double hip = Math.max(1.02 * crotch, Math.min(body.mm(Measure.HIP_HEIGHT), 0.98 * waist));
        double furrow = GirthProfile.furrow(body);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double middle = (crotch + knee) / 2;
        double calf = body.mm(Measure.CALF_HEIGHT);
        double ankle = body.mm(Measure.ANKLE_HEIGHT);
        double top = waist + 0.055 * body.mm(Measure.STATURE);
        double lower = 0.1 * (knee - calf);
        this.outerHeights = new double[] {ankle, calf + lower, knee, middle, furrow, hip, waist, top};
        double[] innerHeights = {ankle, calf - lower, knee, knee + 0.2 * (furrow - knee), middle, furrow};
        this.outline = Smooth.through(outerHeights, outers());
        this.inside = Smooth.through(innerHeights, inners());
    }

    /** Half breadths at ankle, calf, knee, mid-thigh and thigh. */
    private double[] halves() {
        return new double[] {
            depths.leg(Measure.ANKLE_GIRTH, 0.87),
            depths.leg(Measure.CALF_GIRTH, 0.97),
            depths.leg(Measure.KNEE_GIRTH, 0.93),
            depths.leg(Measure.MID_THIGH_GIRTH, 0.97),
            depths.leg(Measure.THIGH_GIRTH, 0.97)
        };
    }

    /** Where the middle of the leg lies there, from the middle of the body. */
    private double[] middles() {
        double axis = GAP + halves()[4];
        return new double[] {0.74 * axis, 0.80 * axis, 0.83 * axis, 0.94 * axis, axis};
    }

    private double[] outers() {
        double[] half = halves();
        double[] at = middles();
        double seat = depths.hipBreadth();
        double waist = depths.waistBreadth();
        return new double[] {
            at[0] + half[0],
            at[1] + half[1],
            at[2] + half[2],
            at[3] + half[3],
            Math.min(at[4] + half[4], Math.max(seat, at[3] + half[3])),
            seat,
            waist,
            waist + 0.008 * body.mm(Measure.STATURE)
        };
    }

    private double[] inners() {
        double[] half = halves();
        double[] at = middles();
        double knee = Math.max(GAP, at[2] - half[2]);
        return new double[] {
            Math.max(GAP, at[0] - half[0]),
            Math.max(GAP, at[1] - half[1]),
            knee,
            knee,
            Math.max(GAP, at[3] - half[3]),
            GAP
        };
    }

    Body body() {
        return body;
    }

    private double aside(double height) {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        return apart * Math.max(0, Math.min(1, (crotch - height) / crotch));
    }

    double outer(double height) {
        return outline.at(height) + aside(height);
    }

    double inner(double height) {
        return inside.at(height) + aside(height);
    }

    /** The widest place between two heights, from the middle. */
    double widest(double low, double high) {
        return Smooth.steps(low, high, 30).stream()
                .mapToDouble(this::outer)
                .max()
                .orElseThrow();
    }

    double top() {
        return outerHeights[outerHeights.length - 1];
    }

    private double ankle() {
        return outerHeights[0];
    }

    private List<Point> outerLine(double from, double to) {
        return Smooth.steps(from, to, 34).stream()
                .map(h -> new Point(outer(h), h))
                .toList();
    }

    private List<Point> innerLine(double from, double to) {
        return Smooth.steps(from, to, 26).stream()
                .map(h -> new Point(inner(h), h))
                .toList();
    }

    /** Between the ankle's two sides, toes towards who looks. */
    private List<Point> foot() {
        double length = body.mm(Measure.FOOT_LENGTH);
        double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        double outside = outer(ankle());
        double inside = inner(ankle());
        double middle = (outside + inside) / 2;
        return List.of(
                new Point(outside + 0.018 * length, bone),
                new Point(outside + 0.020 * length, 0.66 * bone),
                new Point(middle + 0.185 * length, 0.34 * bone),
                new Point(middle + 0.205 * length, 0.13 * bone),
                new Point(middle + 0.18 * length, 0.01 * bone),
                new Point(middle + 0.05 * length, 0),
                new Point(middle - 0.08 * length, 0),
                new Point(middle - 0.118 * length, 0.10 * bone),
                new Point(middle - 0.11 * length, 0.34 * bone),
                new Point(middle - 0.088 * length, 0.66 * bone),
                new Point(inside - 0.024 * length, 1.12 * bone));
    }

    /** Pelvis and both legs down to a height, or with the feet where it is below the ankles. */
    void draw(Pen pen, double low, double high) {
        double to = Math.min(high, top());
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        List<Point> left = new ArrayList<>(outerLine(to, Math.max(low, ankle())));
        if (low < ankle()) {
            left.addAll(foot());
            left.addAll(innerLine(ankle(), Math.min(to, crotch)));
            both(pen, Look.BODY, left);
        } else {
            both(pen, Look.BODY, left);
            both(pen, Look.BODY, innerLine(low, Math.min(to, crotch)));
        }
        details(pen, low, to);
    }

    /** Both legs of a pair from its upper edge down to its hems, as one piece of cloth. */
    void worn(Pen pen, double hem, double top) {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        List<Point> outer = outerLine(top, hem);
        List<Point> inner = innerLine(hem, crotch);
        pen.runs(
                Look.WORN,
                List.of(
                        outer,
                        inner,
                        Smooth.reversed(inner).stream().map(Point::mirrored).toList(),
                        Smooth.reversed(outer).stream().map(Point::mirrored).toList()));
    }

    private void details(Pen pen, double low, double high) {
        double size = body.mm(Measure.STATURE) / 1650;
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double hip = outerHeights[5];
        if (hip + 0.13 * (top() - hip) < high) {
            both(
                    pen,
                    Look.THIN,
                    List.of(
                            new Point(GAP, crotch),
                            new Point(0.30 * outer(hip), crotch + 0.32 * (hip - crotch) + 16 * size),
                            new Point(0.60 * outer(hip), hip + 0.12 * (top() - hip))));
        }
        if (knee > low + 40 * size && knee < high - 40 * size) {
            kneecap(pen, knee, size, -1);
            kneecap(pen, knee, size, 1);
        }
        if (low < ankle()) {
            toes(pen);
        }
    }

    /** One side of each kneecap. */
    private void kneecap(Pen pen, double knee, double size, int side) {
        double axis = (outer(knee) + inner(knee)) / 2;
        double wide = side * 0.23 * (outer(knee) - inner(knee));
        both(
                pen,
                Look.THIN,
                List.of(
                        new Point(axis + wide, knee + 20 * size),
                        new Point(axis + wide, knee - 10 * size),
                        new Point(axis + 0.4 * wide, knee - 30 * size)));
    }

    private void toes(Pen pen) {
        double length = body.mm(Measure.FOOT_LENGTH);
        double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        double middle = (outer(ankle()) + inner(ankle())) / 2;
        double[] between = {-0.025, 0.04, 0.095, 0.145};
        for (double x : between) {
            both(
                    pen,
                    Look.THIN,
                    List.of(
                            new Point(middle + x * length, 0.02 * bone),
                            new Point(middle + (x + 0.004) * length, (0.24 - 0.5 * Math.abs(x)) * bone)));
        }
    }

    private static void both(Pen pen, Look look, List<Point> line) {
        pen.curve(look, line);
        pen.curve(look, line.stream().map(Point::mirrored).toList());
    }
}
