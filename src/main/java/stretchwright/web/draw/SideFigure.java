package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.ground.MonotoneCurve;
import stretchwright.ground.Point;

/**
 * A body below the ribs from its left side, in mm; toes to the left, the ankle bone over 0. At every measured level the
 * figure is as deep as that girth asks; how a section lies before and behind (seat and calf behind, belly, thigh and
 * kneecap forward) is free drawing after a plumb line that falls a little before the ankle bone (no source).
 */
final class SideFigure {
    private final Body body;
    private final double[] heights;
    private final double[] fronts;
    private final double[] backs;
    private final MonotoneCurve front;
    private final MonotoneCurve back;
    private final SideFoot foot;

    SideFigure(Body body) {
        this.body = body;
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double waist = body.mm(Measure.WAIST_HEIGHT);
        double hip = Math.max(crotch + 0.01 * waist, Math.min(body.mm(Measure.HIP_HEIGHT), waist - 0.05 * waist));
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double calf = body.mm(Measure.CALF_HEIGHT);
        double furrow = GirthProfile.furrow(body);
        double ankle = body.mm(Measure.ANKLE_HEIGHT);
        double top = waist + 0.055 * body.mm(Measure.STATURE);
        this.heights = new double[] {
            ankle,
            calf,
            calf + 0.62 * (knee - calf),
            knee,
            knee + 0.18 * (furrow - knee),
            (crotch + knee) / 2,
            furrow - 0.012 * crotch,
            hip + 0.012 * crotch,
            hip + 0.55 * (waist - hip),
            waist,
            top
        };
        this.fronts = new double[heights.length];
        this.backs = new double[heights.length];
        legs();
        trunk();
        this.front = Smooth.through(heights, fronts);
        this.back = Smooth.through(heights, backs);
        this.foot = new SideFoot(body, fronts[0], backs[0]);
    }

    private void level(int level, double half, double behind) {
        fronts[level] = half * (behind - 1);
        backs[level] = half * (behind + 1);
    }

    private void legs() {
        Depths depths = new Depths(body);
        level(0, depths.leg(Measure.ANKLE_GIRTH, 1.10), 0.05);
        level(1, depths.leg(Measure.CALF_GIRTH, 1.03), 0.08);
        level(3, depths.leg(Measure.KNEE_GIRTH, 1.06), -0.14);
        fronts[2] = fronts[1] + 0.30 * (fronts[3] - fronts[1]);
        backs[2] = backs[1] + 0.62 * (backs[3] - backs[1]);
        level(5, depths.leg(Measure.MID_THIGH_GIRTH, 1.02), -0.13);
        fronts[4] = fronts[3] + 0.22 * (fronts[5] - fronts[3]);
        backs[4] = backs[3] + 0.10 * (backs[5] - backs[3]);
        level(6, depths.leg(Measure.THIGH_GIRTH, 1.02), -0.05);
    }

    /** A waist that is deeper than the hip goes forward: the back stays hollow above the seat. */
    private void trunk() {
        Depths depths = new Depths(body);
        double hip = depths.hipDepth();
        double waist = depths.waistDepth();
        level(7, hip, depths.byFigure(0.12, 0.09, 0.07));
        backs[9] = Math.min(0.93 * waist, backs[7] - depths.byFigure(0.20, 0.13, 0.14) * hip);
        fronts[9] = backs[9] - 2 * waist;
        fronts[8] = Math.min(fronts[7], fronts[9]) - depths.byFigure(0.05, 0.01, 0.06) * hip;
        backs[8] = backs[9] + 0.38 * (backs[7] - backs[9]);
        double wider = 0.005 * body.mm(Measure.STATURE);
        fronts[10] = fronts[9] - wider;
        backs[10] = backs[9] + wider;
    }

    Body body() {
        return body;
    }

    SideFoot foot() {
        return foot;
    }

    /** Where the figure is cut off above. */
    double top() {
        return heights[heights.length - 1];
    }

    double ankle() {
        return heights[0];
    }

    double furrow() {
        return GirthProfile.furrow(body);
    }

    double hip() {
        return heights[7];
    }

    /** x of the front at a height from the ankle up; it is negative. */
    double front(double height) {
        return front.at(height);
    }

    double back(double height) {
        return back.at(height);
    }

    List<Point> fronts(double from, double to) {
        return Smooth.steps(from, to, steps(from, to)).stream()
                .map(h -> new Point(front(h), h))
                .toList();
    }

    List<Point> backs(double from, double to) {
        return Smooth.steps(from, to, steps(from, to)).stream()
                .map(h -> new Point(back(h), h))
                .toList();
    }

    private int steps(double from, double to) {
        return Math.max(4, (int) Math.ceil(Math.abs(to - from) / heights[9] * 44));
    }

    /** Down the front, round the foot, up the back. */
    List<Point> outline() {
        List<Point> out = new ArrayList<>(fronts(top(), ankle()));
        out.addAll(foot.line());
        out.addAll(backs(ankle(), top()));
        return out;
    }

    /** Between two heights; with the foot where the lower lies below the ankle. */
    void draw(Pen pen, double low, double high) {
        double to = Math.min(high, top());
        if (low < ankle()) {
            List<Point> all = new ArrayList<>(fronts(to, ankle()));
            all.addAll(foot.line());
            all.addAll(backs(ankle(), to));
            pen.curve(Look.BODY, all);
        } else {
            pen.curve(Look.BODY, fronts(to, low));
            pen.curve(Look.BODY, backs(low, to));
        }
        details(pen, low, to);
    }

    /** Fold of the seat, hollow of the knee, kneecap, bone: what makes a leg of an outline. */
    void details(Pen pen, double low, double high) {
        double size = body.mm(Measure.STATURE) / 1650;
        double furrow = furrow();
        double knee = body.mm(Measure.KNEE_HEIGHT);
        if (furrow > low && furrow < high) {
            pen.curve(
                    Look.THIN,
                    new Point(back(furrow) - 2, furrow + 2),
                    new Point(back(furrow) - 30 * size, furrow - 7 * size),
                    new Point(back(furrow) - 62 * size, furrow - 2 * size));
        }
        if (knee > low + 40 && knee < high - 40) {
            double face = front(knee);
            pen.curve(
                    Look.THIN,
                    new Point(face + 12 * size, knee + 34 * size),
                    new Point(face + 27 * size, knee + 14 * size),
                    new Point(face + 26 * size, knee - 14 * size),
                    new Point(face + 11 * size, knee - 32 * size));
        }
        if (ankle() > low) {
            foot.details(pen);
        }
    }
}
