package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * Half of the crotch seam, front or back: straight from the waist, one bend, a straight tip to the crotch point.
 *
 * <p>From the end of the tip to where the bend leaves the centre seam the direction turns by {@code a (1 - 3 u^2 + 2 u^3)},
 * u the share of its arc: the curvature, 6 a u (1 - u) / l, is zero at both ends and of one sign between, so that nothing
 * jumps at the centre seam, nor across the inseam where the two halves are sewn together. Maths: docs/maths/draft.md, "One
 * crotch curve".
 *
 * <p>Distances out are measured from the side line, outwards on this half: to the left in front, to the right behind.
 *
 * @param lean of the centre seam from upright, radians: inwards going up
 * @param in how far the centre seam stands inside of the hip's own width at the hip line, so that the curve is as wide as the
 *     hip there, mm
 * @param turn the whole angle that the bend turns through, radians
 * @param arc length of the bend, mm
 * @param tip length of the straight tip, mm
 * @param leaves height at which the bend leaves the centre seam, mm
 * @param waist height of the centre seam's upper end, mm
 * @param slant how far a curved centre seam leans in from the hip line to the waist, mm
 * @param curve so many times as much as on the whole a curved centre seam leans at the hip line, a parabola; 1 of a straight
 */
record CrotchBend(
        Ends ends,
        double lean,
        double in,
        double turn,
        double arc,
        double tip,
        double leaves,
        double waist,
        double slant,
        double curve) {
    /** Rounds of the fixed point of lean, height and inset: each leaves some third of the change of the one before. */
    private static final int ROUNDS = 24;

    private static final double SAME = 1e-7;

    /** A centre seam rises at least so far above the hip line while it is looked for, mm. */
    private static final double LEAST_RISE = 8;

    /** A curved centre seam, run on straight from the hip line to the crotch, uses at most this share of the extension (no source). */
    private static final double LEAN_OF_EXTENSION = 0.6;

    /** Chords of a curved centre seam between hip and waist. */
    private static final int SEAM_CHORDS = 16;

    private static final int HIP_ROUNDS = 8;

    /** Of the way from the crotch point in to the centre seam at most this share is straight tip. */
    private static final double MOST_TIP = 0.8;

    /** A tip shorter than this, mm, is drawn as part of the bend's first chord: on the grid it would have no direction. */
    private static final double SHORTEST = 1;

    /** Chords of the bend: at a radius of 25 mm and a turn of 80 degrees they leave it by 0.01 mm. */
    private static final int CHORDS = 36;

    /** Points of Gauss and Legendre on (0, 1) and their weights, five on each side of the middle. */
    private static final double[] GAUSS = {
        0.013046735741414, 0.067468316655507, 0.160295215850488, 0.283302302935376, 0.425562830509184
    };

    private static final double[] WEIGHT = {
        0.033335672154344, 0.074725674575290, 0.109543181257991, 0.134633359654998, 0.147762112357376
    };

    /**
     * What a half is drawn between.
     *
     * @param point the crotch point, out and up
     * @param flare how far the inseam runs outwards per mm upwards at the crotch point
     * @param corner the angle between curve and inseam, radians
     * @param hip how far out the hip line ends, mm
     * @param hipHeight mm
     * @param reach at most so far above the hip line the bend leaves the centre seam, mm
     * @param radius the least radius, mm
     */
    record Ends(Point point, double flare, double corner, double hip, double hipHeight, double reach, double radius) {
        /** The bend ends at the hip line. */
        Ends below() {
            return new Ends(point, flare, corner, hip, hipHeight, 0, radius);
        }
    }

    /**
     * @param waistOut how far out the centre seam ends at the waist, mm
     * @param curve of a centre seam that is curved above the hip line, so many times as much as on the whole it leans there; 1 of
     *     a straight one, which it is too where the bend has no room below the hip line
     * @param length of the half, mm
     */
    static CrotchBend of(Ends ends, double waistOut, double curve, double length) {
        if (curve > 1) {
            CrotchBend shaped = curved(ends.below(), ends.hip - waistOut, curve, length);
            if (shaped.leaves <= ends.hipHeight + SAME) {
                return shaped;
            }
        }
        return straight(ends, waistOut, length);
    }

    private static CrotchBend straight(Ends ends, double waistOut, double length) {
        CrotchBend bend = leaning(ends, 0, 0, length);
        double lean = 0;
        double in = 0;
        for (int i = 0; i < ROUNDS; i++) {
            double rise = Math.max(LEAST_RISE, bend.waist - ends.hipHeight);
            double nextIn = bend.outsideOfSeam();
            double nextLean = StrictMath.atan((ends.hip - nextIn - waistOut) / rise);
            boolean still = Math.abs(nextIn - in) < SAME && Math.abs(nextLean - lean) < SAME;
            in = nextIn;
            lean = nextLean;
            bend = leaning(ends, lean, in, length);
            if (still) {
                break;
            }
        }
        return bend;
    }

    /** The same lean and length, its part above the hip line a parabola. It leans less where it is short. */
    private static CrotchBend curved(Ends ends, double most, double curve, double length) {
        double rise = length / 2;
        CrotchBend bend = leaning(ends, 0, 0, length);
        for (int i = 0; i < ROUNDS; i++) {
            double room = LEAN_OF_EXTENSION
                    * (ends.point.x() - ends.hip)
                    * rise
                    / (curve * (ends.hipHeight - ends.point.y()));
            double slant = Math.min(most, room);
            CrotchBend below = leaning(ends, StrictMath.atan(curve * slant / rise), 0, length);
            double straight = (ends.hipHeight - below.leaves) / StrictMath.cos(below.lean);
            double left = length - below.arc - below.tip - straight - parabola(rise, slant, curve);
            bend = new CrotchBend(
                    ends,
                    below.lean,
                    0,
                    below.turn,
                    below.arc,
                    below.tip,
                    below.leaves,
                    ends.hipHeight + rise,
                    slant,
                    curve);
            if (Math.abs(left) < SAME) {
                break;
            }
            rise = Math.max(LEAST_RISE, rise + left);
        }
        return bend;
    }

    /** How far in a parabola of this slant stands at a share of the rise. */
    private static double in(double share, double slant, double curve) {
        return slant * share * (curve - (curve - 1) * share);
    }

    private static double parabola(double rise, double slant, double curve) {
        double sum = 0;
        for (int i = 0; i < GAUSS.length; i++) {
            for (double u : new double[] {GAUSS[i], 1 - GAUSS[i]}) {
                double across = slant * (curve - 2 * (curve - 1) * u);
                sum += WEIGHT[i] * Math.sqrt(rise * rise + across * across);
            }
        }
        return sum;
    }

    /** With the centre seam's lean and inset given. */
    static CrotchBend leaning(Ends ends, double lean, double in, double length) {
        double sin = StrictMath.sin(lean);
        double cos = StrictMath.cos(lean);
        double turn = ends.corner - StrictMath.atan(ends.flare) - lean;
        double aside =
                (ends.point.x() - ends.hip + in - (ends.hipHeight - ends.point.y()) * StrictMath.tan(lean)) * cos;
        double chord = chord(turn);
        double most = (ends.hipHeight + ends.reach - ends.point.y() + aside * sin) / cos;
        double cot = 1 / StrictMath.tan(turn / 2);
        double bendOnly = 1.5 * turn * ends.radius * chord * StrictMath.sin(turn / 2);
        double longest = Math.min((aside - bendOnly) / StrictMath.sin(turn), MOST_TIP * aside / StrictMath.sin(turn));
        double tip = Math.max(0, Math.min(aside * cot - most, longest));
        double arc = (aside - tip * StrictMath.sin(turn)) / (chord * StrictMath.sin(turn / 2));
        double up = aside * cot - tip;
        double leaves = ends.point.y() - aside * sin + up * cos;
        double waist = leaves + (length - arc - tip) * cos;
        return new CrotchBend(ends, lean, in, turn, arc, tip, leaves, waist, 0, 1);
    }

    /** Straight length over arc of the bend. */
    private static double chord(double turn) {
        double sum = 0;
        for (int i = 0; i < GAUSS.length; i++) {
            for (double u : new double[] {GAUSS[i], 1 - GAUSS[i]}) {
                sum += WEIGHT[i] * StrictMath.cos(turn * (u * u * (3 - 2 * u) - 0.5));
            }
        }
        return sum;
    }

    /** The least radius of the bend, mm. */
    double tightest() {
        return arc / (1.5 * turn);
    }

    /** Centre seam that is left above the bend, upright, mm. */
    double seamAbove() {
        return waist - leaves;
    }

    /** Whether the bend turns the right way, and so much centre seam at least is left above it and above the hip line, mm. */
    boolean isDrawn(double least) {
        return arc > 0 && turn > 0 && Double.isFinite(waist) && waist - Math.max(leaves, ends.hipHeight) > least;
    }

    /** How the centre seam leans at the waist, radians. */
    double leanAtWaist() {
        return curve > 1 ? StrictMath.atan((2 - curve) * slant / (waist - ends.hipHeight)) : lean;
    }

    /** Out and up, from the waist down to the crotch point. */
    List<Point> points() {
        List<Point> up = fromPoint();
        List<Point> out = new ArrayList<>();
        for (int i = SEAM_CHORDS; i > 0 && curve > 1; i--) {
            double share = (double) i / SEAM_CHORDS;
            out.add(new Point(ends.hip - in(share, slant, curve), ends.hipHeight + share * (waist - ends.hipHeight)));
        }
        out.add(curve > 1 ? new Point(ends.hip, ends.hipHeight) : seamAt(waist));
        for (int i = up.size() - 1; i >= 0; i--) {
            if (out.get(out.size() - 1).distance(up.get(i)) > SAME) {
                out.add(up.get(i));
            }
        }
        return out;
    }

    /** @param side -1 in front, 1 behind */
    Path path(int side) {
        return new Path(
                points().stream().map(p -> new Point(side * p.x(), p.y())).toList());
    }

    /** Upper end of the centre seam, out and up. */
    Point top() {
        return curve > 1 ? new Point(ends.hip - slant, waist) : seamAt(waist);
    }

    private Point seamAt(double height) {
        return new Point(ends.hip - in - (height - ends.hipHeight) * StrictMath.tan(lean), height);
    }

    /** The crotch point, the end of the tip, and the bend up to the centre seam. */
    private List<Point> fromPoint() {
        List<Point> out = new ArrayList<>(List.of(ends.point));
        Point at = ends.point.minus(direction(0).times(tip));
        if (tip > SHORTEST) {
            out.add(at);
        }
        double step = arc / CHORDS;
        for (int i = 0; i < CHORDS; i++) {
            at = at.minus(mean(i * step / arc, (i + 1) * step / arc).times(step));
            out.add(at);
        }
        return out;
    }

    /** The way going down at a share of the bend, from the tip up. */
    private Point direction(double share) {
        double angle = lean + turn * (1 - share * share * (3 - 2 * share));
        return new Point(StrictMath.sin(angle), -StrictMath.cos(angle));
    }

    private Point mean(double from, double to) {
        Point sum = Point.ORIGIN;
        for (int i = 0; i < GAUSS.length; i++) {
            for (double u : new double[] {GAUSS[i], 1 - GAUSS[i]}) {
                sum = sum.plus(direction(from + u * (to - from)).times(WEIGHT[i]));
            }
        }
        return sum;
    }

    /**
     * How far the curve stands outside of the straight centre seam at the hip line, mm; 0 where the bend leaves below it. The
     * share of the bend at that height by Newton's method, from where it leaves.
     */
    private double outsideOfSeam() {
        double fall = leaves - ends.hipHeight;
        if (fall <= 0) {
            return 0;
        }
        double share = 1;
        Point gone = Point.ORIGIN;
        for (int i = 0; i < HIP_ROUNDS; i++) {
            gone = mean(share, 1).times((1 - share) * arc);
            double left = fall + gone.y();
            double steep = -direction(share).y() * arc;
            if (steep <= 0) {
                break;
            }
            share = Math.max(0, share - left / steep);
            if (Math.abs(left) < SAME) {
                break;
            }
        }
        return gone.x() - fall * StrictMath.tan(lean);
    }
}
