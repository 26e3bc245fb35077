package stretchwright.draft;

import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;

/**
 * The top of a leg, solved: how much the crotch seam and the rise give way so that the waist edge keeps its place at the side,
 * and front and back keep the lengths that were measured. Maths and figures: docs/maths/draft.md, "The top".
 */
final class Rise {
    /** Hip girth of the body on which the lengths below were found, mm. */
    private static final double MIDDLE_HIP = 965;

    /** Centre front and centre back together stand so far above the side, mm; and at most and at least (no source). */
    private static final double ENDS_UP = 18;

    private static final double MOST_UP = 72;
    private static final double LEAST_UP = -4;

    /** Centre back over centre front, mm: from and to; and how far each may stand above the side (no source). */
    private static final double LEAST_TILT = 5;

    private static final double MOST_TILT = 60;
    private static final double FRONT_UP = 18;
    private static final double BACK_UP = 56;

    /** A rise that is too long for its crotch seam is taken in by so much more than the leg (no source). */
    private static final double MORE_OFF_RISE = 0.03;

    /** The inseam moves by at most this share of the crotch extension for the tilt's sake, and forward of half never. */
    private static final double SHARE_MOVES = 0.05;

    private static final double MOST_SHARE = 0.50;

    /** Of the crotch length, behind: mean of the women of 1988, 0.506 to 0.512. */
    static final double BACK_OF_CROTCH = 0.51;

    /** A crotch point leaves the inseam by so much less than square in front, and so much more behind, degrees (no source). */
    private static final double OFF_SQUARE = 5;

    /** The bend leaves the centre seam at most so far above the hip line, share of half the hip (no source). */
    private static final double REACH = 0.085;

    /** Least radius of the sewn bend, mm. */
    private static final double RADIUS_ADULT = 25;

    private static final double RADIUS_CHILD = 18;

    /** The hip line of the draft stands between these shares of the way from crotch to waist (no source). */
    private static final double LOWEST_HIP = 0.15;

    private static final double HIGHEST_HIP = 0.60;

    /** And so far above the crotch, share of the crotch extension: the bends have room (no source). */
    private static final double HIP_OVER_EXTENSION = 0.45;

    /** A crotch length that was only estimated gives way by at most this share: its own spread (docs/maths/body.md). */
    static final double ESTIMATE_GIVES = 0.035;

    /** Who sits all day: centre front lower and centre back higher, mm (common practice, no source). */
    static final double SEATED_FRONT = -20;

    static final double SEATED_BACK = 40;

    private static final int TILT_ROUNDS = 4;
    private static final double SAME = 1e-6;

    private final Order order;
    private final Frame frame;
    private final LegCurves curves;
    private final Body body;
    private final Style style;
    private final double scale;
    private final double crotch;
    private final double radius;
    private Fork last;

    Rise(Order order, Frame frame, LegCurves curves, double crotch) {
        this.order = order;
        this.frame = frame;
        this.curves = curves;
        this.body = order.body();
        this.style = order.style();
        this.scale = body.mm(Measure.HIP_GIRTH) / MIDDLE_HIP;
        // where the body has it: a crotch line moved by hand leaves hip and waist where they are
        this.crotch = crotch + order.shift(Shift.CROTCH_LINE);
        this.radius = radius(body);
        this.last = Fork.of(curves, leastWidth(), Frame.FRONT_EXTENSION_SHARE);
    }

    /**
     * The top for one give: 0 takes what is usual off crotch seam and rise, 1 all that the cloth allows, -1 little.
     *
     * @param side height of the waist edge at the side, mm
     * @param estimate so many times its estimate the total crotch length was taken; 1 where it was measured
     * @param backOff by how much the back is longer than its measure asks, so that it stands no higher than a back can, mm flat
     * @param ends how far centre front and centre back are to stand above it, together, mm
     */
    record Trial(
            double give,
            Fork fork,
            CrotchBend front,
            CrotchBend back,
            double side,
            double ends,
            double crotchTaken,
            double riseTaken,
            double estimate,
            double hipHeight,
            double backOff) {
        double up() {
            return front.waist() + back.waist() - 2 * side;
        }

        double tilt() {
            return back.waist() - front.waist();
        }

        /** By how much the ends stand higher than they are to, together, mm. */
        double over() {
            return up() - ends;
        }

        double tightest() {
            return Math.min(front.tightest(), back.tightest());
        }

        /** Whether both centre seams leave their bends well below the waist. */
        boolean isDrawn(double least) {
            return front.isDrawn(least) && back.isDrawn(least);
        }
    }

    /** The least radius of the sewn crotch seam, mm. */
    static double radius(Body body) {
        return body.figure() == Figure.CHILD ? RADIUS_CHILD : RADIUS_ADULT;
    }

    private double leastWidth() {
        return Math.max(curves.grown(), frame.leastCrotch());
    }

    /** Solved for the give; then, where a bend is too tight, again with the inseam further back, and with a wider crotch line. */
    Trial solved() {
        double width = leastWidth();
        double share = Frame.FRONT_EXTENSION_SHARE;
        Trial trial = solved(width, share);
        if (trial.tightest() >= radius) {
            return trial;
        }
        if (trial.front.tightest() < trial.back.tightest()) {
            OptionalDouble further =
                    Roots.between(s -> solved(width, s).front.tightest() - radius, share, MOST_SHARE, COARSE);
            share = further.orElse(MOST_SHARE);
            trial = solved(width, share);
            if (trial.tightest() >= radius - TRACE) {
                return trial;
            }
        }
        double own = share;
        double widest = width + MOST_WIDER * frame.hip();
        OptionalDouble wider = Roots.between(w -> solved(w, own).tightest() - radius, width, widest, COARSE);
        return solved(wider.orElse(widest), own);
    }

    /** Tried for a radius: to this, mm or share, the root is found. */
    private static final double COARSE = 1e-4;

    private static final double TRACE = 0.05;

    /** The crotch line is made wider for a bend by at most this share of half the hip (no source). */
    private static final double MOST_WIDER = 0.15;

    /** As long in front and behind as another leg, taken in as much as it. */
    Trial matching(Top top, double share) {
        double rise = (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist() - body.mm(Measure.CROTCH_HEIGHT))
                * (1 - top.riseTaken());
        double width = leastWidth();
        Fork fork = fork(width, share);
        double hip = hip(rise, top.riseTaken(), width);
        CrotchBend front = front(fork, hip, top.frontLength());
        CrotchBend back = back(fork, hip, top.backLength());
        return new Trial(
                0,
                fork,
                front,
                back,
                crotch + rise,
                0,
                top.crotchTaken(),
                top.riseTaken(),
                top.estimate(),
                hip,
                top.backOff());
    }

    private double hip(double rise, double taken, double width) {
        double measured = crotch + (body.mm(Measure.HIP_HEIGHT) - body.mm(Measure.CROTCH_HEIGHT)) * (1 - taken);
        double low = crotch + Math.max(LOWEST_HIP * rise, HIP_OVER_EXTENSION * (width - frame.hip()));
        return Math.max(low, Math.min(crotch + HIGHEST_HIP * rise, measured));
    }

    private Trial solved(double width, double share) {
        Trial most = at(1, width, share);
        if (most.over() >= 0) {
            return most;
        }
        Trial least = at(-1, width, share);
        if (least.over() <= 0) {
            return least;
        }
        double give = Roots.between(g -> at(g, width, share).over(), -1, 1).orElseThrow();
        return at(give, width, share);
    }

    private Trial at(double give, double width, double share) {
        double stretch = order.fabric().test().stretchAlong();
        double usual = order.reductions().crotch();
        double most = Math.max(
                usual, Math.min(Reducing.MOST_CROTCH_AT_ALL, Reducing.reduction(Reducing.MOST_OF_STRETCH * stretch)));
        double along = order.reductions().along();
        double crotchTaken = give > 0 ? usual + give * (most - usual) : usual * (1 + give / 2);
        double riseTaken = give > 0 ? along * (1 - give) : along - give * MORE_OFF_RISE;
        double up = give > 0 ? ENDS_UP + give * give * (MOST_UP - ENDS_UP) : ENDS_UP + give * (ENDS_UP - LEAST_UP);
        double front = order.frontRaise() * (1 - crotchTaken) + (body.seated() ? SEATED_FRONT : 0);
        double back = order.backRaise() * (1 - crotchTaken) + (body.seated() ? SEATED_BACK : 0);
        double rise = (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist() - body.mm(Measure.CROTCH_HEIGHT))
                * (1 - riseTaken);
        double side = crotch + rise;
        double hip = hip(rise, riseTaken, width);
        double waist = body.mm(Measure.WAIST_HEIGHT);
        double frontUp = front + body.stance().frontAbove(waist) * (1 - crotchTaken);
        double backUp = back + body.stance().backAbove(waist) * (1 - crotchTaken);
        double ends = scale * up + frontUp + backUp + GussetCut.shortening(style);
        double estimate = body.isGiven(Measure.TOTAL_CROTCH_LENGTH) ? 1 : 1 - ESTIMATE_GIVES * give;
        Given given =
                new Given(give, width, side, ends, crotchTaken, riseTaken, estimate, hip, front, back, frontUp, backUp);
        return tilted(given, share, share - SHARE_MOVES, Math.min(MOST_SHARE, share + SHARE_MOVES));
    }

    /**
     * What a trial has before the inseam's place is settled.
     *
     * @param front by how much the front half of the seam is longer than the body asks, mm
     * @param frontUp how much higher than usual the centre front is to stand, mm: so much, and where its waist was measured
     */
    private record Given(
            double give,
            double width,
            double side,
            double ends,
            double crotchTaken,
            double riseTaken,
            double estimate,
            double hip,
            double front,
            double back,
            double frontUp,
            double backUp) {}

    private Trial tilted(Given given, double share, double lower, double upper) {
        Trial plain = drawn(given, share, 0);
        double excess = excess(plain, given);
        if (excess == 0) {
            return plain;
        }
        double end = excess > 0 ? upper : lower;
        Trial moved = drawn(given, end, 0);
        double left = excess(moved, given);
        if (left == 0 || (left > 0) != (excess > 0)) {
            OptionalDouble s = Roots.between(
                    x -> distance(drawn(given, x, 0), given, excess > 0),
                    Math.min(share, end),
                    Math.max(share, end),
                    COARSE);
            return drawn(given, s.orElse(end), 0);
        }
        double shift = 0;
        for (int i = 0; i < TILT_ROUNDS && Math.abs(left) > SAME; i++) {
            shift += left / 2;
            moved = drawn(given, end, shift);
            left = distance(moved, given, excess > 0);
        }
        return moved;
    }

    /** By how much the tilt is out of its bounds, mm; 0 inside. */
    private double excess(Trial t, Given given) {
        double over = distance(t, given, true);
        double under = distance(t, given, false);
        return over > 0 ? over : under < 0 ? under : 0;
    }

    /** From the upper or the lower bound of the tilt, mm. */
    private double distance(Trial t, Given given, boolean most) {
        double more = given.backUp - given.frontUp;
        double bound = most
                ? Math.min(MOST_TILT * scale + more, 2 * BACK_UP * scale + 2 * given.backUp - given.ends)
                : Math.max(LEAST_TILT * scale + more, given.ends - 2 * FRONT_UP * scale - 2 * given.frontUp);
        return t.tilt() - bound;
    }

    private Trial drawn(Given given, double share, double shift) {
        Fork fork = fork(given.width, share);
        double gusset = GussetCut.shortening(style);
        double taken = given.estimate * (1 - given.crotchTaken);
        double whole = crotchLength() * taken
                + given.front
                + given.back
                + gusset
                + order.moves().seamInFront()
                + order.moves().seamBehind();
        double behind = backLength() * taken
                + given.width / 2
                - frame.crotchFront(given.width, share)
                + given.back
                + gusset / 2
                + order.moves().seamBehind()
                - shift;
        CrotchBend front = front(fork, given.hip, whole - behind);
        CrotchBend back = back(fork, given.hip, behind);
        return new Trial(
                given.give,
                fork,
                front,
                back,
                given.side,
                given.ends,
                given.crotchTaken,
                given.riseTaken,
                given.estimate,
                given.hip,
                -shift);
    }

    private CrotchBend front(Fork fork, double hip, double length) {
        return CrotchBend.of(
                ends(fork.frontOut(), fork.frontFlare(), -OFF_SQUARE, -frame.hipFront(), hip),
                -frame.waistFront(),
                1,
                length);
    }

    private CrotchBend back(Fork fork, double hip, double length) {
        return CrotchBend.of(
                ends(fork.backOut(), fork.backFlare(), OFF_SQUARE, frame.hipBack(), hip),
                frame.waistBack(),
                frame.leanAtHip(),
                length);
    }

    private CrotchBend.Ends ends(Point point, double flare, double off, double hip, double height) {
        return new CrotchBend.Ends(point, flare, Math.toRadians(90 + off), hip, height, REACH * frame.hip(), radius);
    }

    private Fork fork(double width, double share) {
        if (last.width() != width || last.share() != share) {
            last = Fork.of(curves, width, share);
        }
        return last;
    }

    /** Over the body, from top edge to top edge, mm. */
    private double crotchLength() {
        return body.mm(Measure.TOTAL_CROTCH_LENGTH) - 2 * style.dropBelowWaist();
    }

    private double backLength() {
        double back = body.isGiven(Measure.BACK_CROTCH_LENGTH)
                ? body.mm(Measure.BACK_CROTCH_LENGTH)
                : BACK_OF_CROTCH * body.mm(Measure.TOTAL_CROTCH_LENGTH);
        return back - style.dropBelowWaist();
    }
}
