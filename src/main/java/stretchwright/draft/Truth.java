package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Style;

/**
 * How true a draft is to the body, read from what was drawn and not from what was meant: of a leg in one piece.
 *
 * @param turn most that the crotch seam, front and back sewn together, turns over 10 mm, degrees
 * @param miss how far above its measured place the waist edge stands at the side, mm on the body
 * @param strain largest difference between the strain of a width as told and as drawn, percentage points
 * @param notches longest stretch of a long seam without a pair of notches, mm
 * @param split how much longer the back crotch length is than measured (or, not measured, than usual), mm on the body
 */
public record Truth(double turn, double miss, double strain, double notches, double split) {
    /** Over so much of the seam its turn is read, mm. */
    public static final double STEP = 10;

    public static Truth of(Body body, Style style, Pattern pattern) {
        Piece leg = pattern.legs().get(0);
        return new Truth(
                turn(leg),
                DraftCheck.correction(body, style, pattern)
                        / (1 - pattern.reductions().rise()),
                strain(body, pattern),
                NotchGaps.largest(pattern),
                split(body, style, pattern));
    }

    /** The least radius that such a turn belongs to, mm. */
    public double radius() {
        return STEP / Math.toRadians(turn);
    }

    /** Both halves as they lie when the inseam is sewn: the back laid against the front, crotch point on crotch point. */
    static Path joined(Piece leg) {
        Path front = leg.edge(EdgeName.FRONT_CROTCH).line();
        Path back = leg.edge(EdgeName.BACK_CROTCH).line();
        Point down = leg.edge(EdgeName.FRONT_INSEAM).line().directionAt(0);
        Path backInseam = leg.edge(EdgeName.BACK_INSEAM).line();
        Point alike = backInseam.directionAt(backInseam.length()).times(-1);
        double cos = alike.dot(down);
        double sin = alike.cross(down);
        List<Point> points = new ArrayList<>(front.points());
        Point from = back.start();
        for (Point p : back.points().subList(1, back.points().size())) {
            Point q = p.minus(from);
            points.add(front.end().plus(new Point(cos * q.x() - sin * q.y(), sin * q.x() + cos * q.y())));
        }
        return new Path(points);
    }

    static double turn(Piece leg) {
        Path seam = joined(leg);
        double most = 0;
        for (double s = STEP; s <= seam.length() - STEP; s += STEP / 4) {
            Point a = seam.at(s).minus(seam.at(s - STEP));
            Point b = seam.at(s + STEP).minus(seam.at(s));
            most = Math.max(most, Math.abs(StrictMath.atan2(a.cross(b), a.dot(b))));
        }
        return Math.toDegrees(most);
    }

    private static double strain(Body body, Pattern pattern) {
        Piece leg = pattern.legs().get(0);
        double most = 0;
        for (Level level : pattern.onlyLeg(leg.name().leg()).levels()) {
            double girth = girth(body, level.name());
            if (girth > 0) {
                double chord =
                        DraftCheck.width(leg, level.height()) * (level.name().wholeBody() ? 2 : 1);
                most = Math.max(most, 100 * Math.abs(girth / level.width() - girth / chord));
            }
        }
        return most;
    }

    /** 0 where the level has no girth of the body. */
    private static double girth(Body body, Level.Name level) {
        return switch (level) {
            case HIP -> body.mm(Measure.HIP_GIRTH);
            case CROTCH -> body.mm(Measure.THIGH_GIRTH);
            case MID_THIGH -> body.mm(Measure.MID_THIGH_GIRTH);
            case KNEE -> body.mm(Measure.KNEE_GIRTH);
            case CALF -> body.mm(Measure.CALF_GIRTH);
            case ANKLE -> body.mm(Measure.ANKLE_GIRTH);
            case WAIST, BOOT_TOP, HEM -> 0;
        };
    }

    private static double split(Body body, Style style, Pattern pattern) {
        Reason back = pattern.reasons().stream()
                .filter(r -> r.dimension().what() == Dimension.What.BACK_CROTCH_LENGTH)
                .findFirst()
                .orElseThrow();
        double before = back.inputs().get(back.inputs().size() - 1).value();
        double flat = 1 - pattern.reductions().crotch();
        double usual = body.isGiven(Measure.BACK_CROTCH_LENGTH)
                ? body.mm(Measure.BACK_CROTCH_LENGTH)
                : Body.BACK_OF_CROTCH * body.mm(Measure.TOTAL_CROTCH_LENGTH);
        double drawn = (back.value() - before) / flat
                + style.dropBelowWaist()
                - style.top().backRaise();
        return drawn - usual;
    }
}
