package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.ground.Point;

/**
 * The outline of a body from front and side, in mm, made from its girths.
 *
 * <p>Sections are ellipses (trunk) or circles (legs). Depth over breadth of the trunk, means of the US Army surveys of
 * 1988 and 2012: waist at the navel 0.71 women and 0.73 men; hip 0.66 and 0.72 (buttock depth over hip breadth);
 * children half way between. Legs are drawn round; where the middle of a section lies, and all above the waist, is free drawing (no source).
 */
final class BodyOutline {
    private static final int STEPS = 60;
    /** How far the seat and the calf stand behind the line of the leg, as a share of their own radius (no source). */
    private static final double SEAT_BACK = 0.12;

    private static final double CALF_BACK = 0.22;

    private final Body body;
    private final GirthProfile left;
    private final GirthProfile right;
    private final GirthProfile whole;
    private final double crotch;
    private final double hip;
    private final double waist;
    private final double ankle;

    BodyOutline(Body body) {
        this.body = body;
        this.left = GirthProfile.of(body.leg(Side.LEFT));
        this.right = GirthProfile.of(body.leg(Side.RIGHT));
        this.whole = GirthProfile.of(body);
        this.crotch = body.mm(Measure.CROTCH_HEIGHT);
        this.waist = body.mm(Measure.WAIST_HEIGHT);
        this.hip = Math.max(crotch + 1, Math.min(body.mm(Measure.HIP_HEIGHT), waist - 1));
        this.ankle = body.mm(Measure.ANKLE_HEIGHT);
    }

    double thighHeight() {
        return crotch * 0.97;
    }

    /** Widest place of the drawn body at a height: half of the whole width. */
    double outerAt(double height) {
        return height >= crotch
                ? breadthAt(height)
                : Math.max(legMiddle(height) + radius(left, height), legMiddle(height) + radius(right, height));
    }

    /** Where a girth begins on the other side: across the trunk, or at the inside of the left leg. */
    double innerAt(double height) {
        return height >= crotch ? -breadthAt(height) : legMiddle(height) - radius(left, height);
    }

    /** The wearer's left is at positive x. */
    List<Point> front() {
        List<Point> out = new ArrayList<>();
        trunk(out, 1);
        leg(out, left, 1);
        leg(out, right, -1);
        trunk(out, -1);
        return out;
    }

    private void trunk(List<Point> out, int sign) {
        for (int i = 0; i <= STEPS; i++) {
            double share = sign > 0 ? (double) i / STEPS : 1 - (double) i / STEPS;
            double h = waist + (crotch - waist) * share;
            out.add(new Point(sign * breadthAt(h), h));
        }
    }

    /** On the left leg down the outside and up the inside, on the right leg the other way round. */
    private void leg(List<Point> out, GirthProfile profile, int sign) {
        List<Point> outside = new ArrayList<>();
        List<Point> inside = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double h = crotch + (ankle - crotch) * i / STEPS;
            outside.add(new Point(sign * (legMiddle(h) + radius(profile, h)), h));
            inside.add(new Point(sign * (legMiddle(h) - radius(profile, h)), h));
        }
        double foot = legMiddle(ankle);
        double half = body.mm(Measure.FOOT_LENGTH) * 0.2;
        outside.add(new Point(sign * (foot + half), 8));
        outside.add(new Point(sign * (foot + half), 0));
        outside.add(new Point(sign * (foot - half * 0.7), 0));
        outside.add(new Point(sign * (foot - half * 0.7), 8));
        java.util.Collections.reverse(inside);
        outside.addAll(inside);
        if (sign < 0) {
            java.util.Collections.reverse(outside);
        }
        out.addAll(outside);
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

    private double breadthAt(double height) {
        double legs = 2 * legMiddle(crotch);
        if (height >= hip) {
            return halfBreadth(whole.wholeGirthAt(height), ratioAt(height));
        }
        double share = (height - crotch) / (hip - crotch);
        return legs + (halfBreadth(whole.wholeGirthAt(hip), ratioAt(hip)) - legs) * share;
    }

    private double ratioAt(double height) {
        double share = Math.max(0, Math.min(1, (height - hip) / (waist - hip)));
        return hipRatio() + (waistRatio() - hipRatio()) * share;
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

    /** Front (toes) at negative x. */
    List<Point> side() {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double h = waist + (ankle - waist) * i / STEPS;
            out.add(new Point(middleAt(h) - depthAt(h), h));
        }
        double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
        out.add(new Point(toe() * 0.55, bone * 0.8));
        out.add(new Point(toe() * 0.95, bone * 0.35));
        out.add(new Point(toe(), 5));
        out.add(new Point(toe(), 0));
        out.add(new Point(heel(), 0));
        out.add(new Point(heel(), bone * 0.5));
        for (int i = STEPS; i >= 0; i--) {
            double h = waist + (ankle - waist) * i / STEPS;
            out.add(new Point(middleAt(h) + depthAt(h), h));
        }
        return out;
    }

    double heel() {
        return radius(whole, ankle) + 12;
    }

    double toe() {
        return heel() - body.mm(Measure.FOOT_LENGTH);
    }

    /** Half the depth at a height; between hip and crotch from the trunk's to the thigh's. */
    private double depthAt(double height) {
        if (height >= hip) {
            return halfBreadth(whole.wholeGirthAt(height), ratioAt(height)) * ratioAt(height);
        }
        if (height <= crotch) {
            return radius(whole, height);
        }
        double t = (height - crotch) / (hip - crotch);
        double share = t * t * (3 - 2 * t);
        return depthAt(crotch) + (depthAt(hip) - depthAt(crotch)) * share;
    }

    private double middleAt(double height) {
        double calf = body.mm(Measure.CALF_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double seat = SEAT_BACK * depthAt(hip);
        double back = CALF_BACK * radius(whole, calf);
        double[] heights = {ankle, calf, knee, crotch, hip, waist};
        double[] middles = {0, back, 0, seat / 2, seat, 0};
        int i = 1;
        while (i < heights.length - 1 && height > heights[i]) {
            i++;
        }
        double t = Math.max(0, Math.min(1, (height - heights[i - 1]) / (heights[i] - heights[i - 1])));
        return middles[i - 1] + (middles[i] - middles[i - 1]) * t * t * (3 - 2 * t);
    }

    /** From the front waist close to the body through the legs to the back waist. */
    List<Point> crotchLine() {
        List<Point> front = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (double h = waist; h > crotch; h -= (waist - crotch) / 12) {
            double inwards = Math.max(0, (hip - h) / (hip - crotch));
            double half = depthAt(h) * Math.sqrt(Math.max(0, 1 - inwards * inwards));
            front.add(new Point(middleAt(h) - half - 6, h));
            back.add(new Point(middleAt(h) + half + 6, h));
        }
        front.add(new Point(middleAt(crotch), crotch - 4));
        java.util.Collections.reverse(back);
        front.addAll(back);
        return front;
    }

    /** From the bend of the foot to the tip of the heel. */
    List<Point> heelLine() {
        return List.of(
                new Point(-radius(whole, ankle), body.mm(Measure.ANKLE_BONE_HEIGHT) * 1.2), new Point(heel(), 4));
    }

    /** Head and trunk above the waist; there is nothing measured there but the stature. */
    List<Point> upper() {
        double top = body.mm(Measure.STATURE);
        return above(halfBreadth(whole.wholeGirthAt(waist), waistRatio()), 0.115 * top, 0.045 * top, 0);
    }

    List<Point> upperSide() {
        double top = body.mm(Measure.STATURE);
        double half = halfBreadth(whole.wholeGirthAt(waist), waistRatio()) * waistRatio();
        return above(half, 0.05 * top, 0.055 * top, middleAt(waist));
    }

    private List<Point> above(double waistHalf, double shoulder, double head, double middle) {
        double top = body.mm(Measure.STATURE);
        double neck = 0.87 * top;
        double neckHalf = 0.033 * top;
        List<Point> out = new ArrayList<>();
        out.add(new Point(middle + waistHalf, waist));
        out.add(new Point(middle + shoulder, 0.75 * top));
        out.add(new Point(middle + shoulder, 0.81 * top));
        out.add(new Point(middle + neckHalf, 0.85 * top));
        double radius = (top - neck) / 2;
        for (int i = -5; i <= 23; i++) {
            double angle = Math.toRadians(-35 + (i + 5) * 250.0 / 28);
            out.add(new Point(middle + head * Math.cos(angle), neck + radius + radius * Math.sin(angle)));
        }
        out.add(new Point(middle - neckHalf, 0.85 * top));
        out.add(new Point(middle - shoulder, 0.81 * top));
        out.add(new Point(middle - shoulder, 0.75 * top));
        out.add(new Point(middle - waistHalf, waist));
        return out;
    }
}
