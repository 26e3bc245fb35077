package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.ground.Point;

/**
 * The outline of a body below the waist from front and side, in mm, made from its girths: at every measured level the
 * drawing is as wide and deep as that girth asks.
 *
 * <p>Sections are ellipses (trunk) or circles (legs). Depth over breadth of the trunk, means of the US Army surveys of
 * 1988 and 2012: waist at the navel 0.71 women and 0.73 men; hip 0.66 and 0.72 (buttock depth over hip breadth);
 * children half way between. Legs are drawn round; where the middle of a section lies, and the foot, is free drawing (no
 * source).
 */
final class BodyOutline {
    private static final int STEPS = 60;
    /** How far the seat and the calf stand behind the line of the leg, as a share of their own radius (no source). */
    private static final double SEAT_BACK = 0.12;

    private static final double CALF_BACK = 0.22;

    private final Body body;
    private final double crotch;
    private final double hip;
    private final double waist;
    private final double ankle;
    private final GirthProfile left;
    private final GirthProfile right;
    private final GirthProfile whole;

    BodyOutline(Body body) {
        this.body = body;
        this.left = legOf(body, Side.LEFT);
        this.right = legOf(body, Side.RIGHT);
        this.whole = GirthProfile.of(body);
        this.crotch = body.mm(Measure.CROTCH_HEIGHT);
        this.waist = body.mm(Measure.WAIST_HEIGHT);
        this.hip = Math.max(crotch + 1, Math.min(body.mm(Measure.HIP_HEIGHT), waist - 1));
        this.ankle = body.mm(Measure.ANKLE_HEIGHT);
    }

    private static GirthProfile legOf(Body body, Side side) {
        return GirthProfile.of(body.leg(side));
    }

    double thighHeight() {
        return crotch * 0.97;
    }

    /** Right end of a girth on the drawing: of the trunk, or of the outside of that leg. */
    double outerAt(Side side, double height) {
        return height >= crotch ? breadthAt(side, height) : legMiddle(height) + radius(profile(side), height);
    }

    /** Its other end: across the trunk, or the inside of that leg. */
    double innerAt(Side side, double height) {
        return height >= crotch ? -breadthAt(other(side), height) : legMiddle(height) - radius(profile(side), height);
    }

    private static Side other(Side side) {
        return side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    }

    private GirthProfile profile(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** From the left waist round both legs to the right waist; the wearer's left is at positive x. */
    List<Point> front() {
        List<Point> out = new ArrayList<>(half(Side.LEFT));
        List<Point> back = mirrored(half(Side.RIGHT));
        Collections.reverse(back);
        out.addAll(back);
        return out;
    }

    private static List<Point> mirrored(List<Point> points) {
        List<Point> out = new ArrayList<>();
        points.forEach(p -> out.add(new Point(-p.x(), p.y())));
        return out;
    }

    /** Down the outside, round the foot, up the inside to the crotch; as if on the left. */
    private List<Point> half(Side side) {
        GirthProfile leg = profile(side);
        List<Point> out = new ArrayList<>();
        for (double h : heights(waist, ankle)) {
            out.add(new Point(outerAt(side, h), h));
        }
        out.addAll(SmoothLine.through(foot(legMiddle(ankle), radius(leg, ankle))));
        for (double h : heights(ankle, crotch)) {
            out.add(new Point(Math.max(0, legMiddle(h) - radius(leg, h)), h));
        }
        out.add(new Point(0, crotch));
        return out;
    }

    private static List<Double> heights(double from, double to) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            all.add(from + (to - from) * i / STEPS);
        }
        return all;
    }

    private List<Point> foot(double middle, double ankleRadius) {
        double length = body.mm(Measure.FOOT_LENGTH);
        double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        return List.of(
                new Point(middle + ankleRadius, ankle),
                new Point(middle + ankleRadius * 1.06, bone),
                new Point(middle + length * 0.17, bone * 0.42),
                new Point(middle + length * 0.20, 10),
                new Point(middle + length * 0.16, 0),
                new Point(middle - length * 0.13, 0),
                new Point(middle - length * 0.16, 10),
                new Point(middle - length * 0.14, bone * 0.42),
                new Point(middle - ankleRadius * 1.1, bone * 1.05),
                new Point(middle - ankleRadius, ankle));
    }

    private static double radius(GirthProfile profile, double height) {
        return profile.girthAt(height) / (2 * Math.PI);
    }

    /** The legs touch at the crotch and stand a little apart at the ankles. */
    private double legMiddle(double height) {
        double top = Math.max(radius(left, crotch), radius(right, crotch));
        double share = Math.max(0, Math.min(1, (height - ankle) / (crotch - ankle)));
        double apart = 0.85 * top;
        return apart + (top - apart) * share;
    }

    /** Half the breadth of the trunk: exact at waist and hip, smooth down to the outside of the leg at the crotch. */
    private double breadthAt(Side side, double height) {
        double below = crotch - 0.08 * crotch;
        double[] x = {below, crotch, hip, waist};
        double[] y = {
            legMiddle(below) + radius(profile(side), below),
            legMiddle(crotch) + radius(profile(side), crotch),
            halfBreadth(whole.wholeGirthAt(hip), hipRatio()),
            halfWaist()
        };
        return SmoothLine.at(x, y, height);
    }

    double halfWaist() {
        return halfBreadth(whole.wholeGirthAt(waist), waistRatio());
    }

    double halfWaistDepth() {
        return halfWaist() * waistRatio();
    }

    private double waistRatio() {
        return body.figure() == Figure.WOMAN ? 0.71 : body.figure() == Figure.MAN ? 0.73 : 0.72;
    }

    private double hipRatio() {
        return body.figure() == Figure.WOMAN ? 0.66 : body.figure() == Figure.MAN ? 0.72 : 0.69;
    }

    /**
     * Half the longer axis of an ellipse of that girth; Ramanujan's approximation of the perimeter (Quarterly Journal of
     * Mathematics 45, 1914), off by less than 1 in 10000 at these ratios.
     */
    static double halfBreadth(double girth, double ratio) {
        double h = Math.pow((1 - ratio) / (1 + ratio), 2);
        double perimeterOfUnit = Math.PI * (1 + ratio) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
        return girth / perimeterOfUnit;
    }

    /** Front (toes) at negative x, so the leg that is seen is the left one; the other may be drawn behind it. */
    List<Point> side(Side side) {
        GirthProfile leg = profile(side);
        List<Point> out = new ArrayList<>();
        for (double h : heights(waist, ankle)) {
            out.add(new Point(middleAt(leg, h) - depthAt(leg, h), h));
        }
        out.addAll(SmoothLine.through(footFromTheSide(leg)));
        for (double h : heights(ankle, waist)) {
            out.add(new Point(middleAt(leg, h) + depthAt(leg, h), h));
        }
        return out;
    }

    private List<Point> footFromTheSide(GirthProfile leg) {
        double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        double r = radius(leg, ankle);
        return List.of(
                new Point(-r, ankle),
                new Point(-r - 4, bone * 1.15),
                new Point(toe() * 0.55, bone * 0.78),
                new Point(toe() * 0.8, bone * 0.42),
                new Point(toe() * 0.97, bone * 0.27),
                new Point(toe(), bone * 0.12),
                new Point(toe() * 0.95, 0),
                new Point(toe() * 0.5, 0),
                new Point(heel() - 25, 0),
                new Point(heel() - 4, 6),
                new Point(heel(), bone * 0.35),
                new Point(heel() - 6, bone * 0.85),
                new Point(r, ankle));
    }

    double heel() {
        return radius(left, ankle) + 12;
    }

    double toe() {
        return heel() - body.mm(Measure.FOOT_LENGTH);
    }

    /** Half the depth at a height: of the trunk from the waist to the hip, from there on to the thigh's. */
    private double depthAt(GirthProfile leg, double height) {
        if (height <= crotch) {
            return radius(leg, height);
        }
        double[] x = {crotch - 0.08 * crotch, crotch, hip, waist};
        double[] y = {radius(leg, x[0]), radius(leg, crotch), hipDepth(), halfWaistDepth()};
        return SmoothLine.at(x, y, height);
    }

    private double hipDepth() {
        return halfBreadth(whole.wholeGirthAt(hip), hipRatio()) * hipRatio();
    }

    private double middleAt(GirthProfile leg, double height) {
        double calf = body.mm(Measure.CALF_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double seat = SEAT_BACK * hipDepth();
        double back = CALF_BACK * radius(leg, calf);
        double[] heights = {ankle, calf, knee, (knee + crotch) / 2, hip, waist};
        return SmoothLine.at(heights, new double[] {0, back, 0, 0, seat, 0}, height);
    }

    /** From the front waist close to the body through the legs to the back waist. */
    List<Point> crotchLine() {
        List<Point> front = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        double turn = crotch + 0.6 * (hip + 0.25 * (waist - hip) - crotch);
        for (double h : heights(waist, crotch)) {
            double inwards = Math.max(0, (turn - h) / (turn - crotch));
            double half = (depthAt(left, h) + 6) * Math.sqrt(Math.max(0, 1 - inwards * inwards));
            front.add(new Point(middleAt(left, h) - half, h));
            back.add(new Point(middleAt(left, h) + half, h));
        }
        Collections.reverse(back);
        front.addAll(back);
        return front;
    }

    /** From the bend of the foot to the tip of the heel. */
    List<Point> heelLine() {
        return List.of(
                new Point(-radius(left, ankle) - 4, body.mm(Measure.ANKLE_BONE_HEIGHT) * 1.2), new Point(heel(), 4));
    }
}
