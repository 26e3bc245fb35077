package stretchwright.draft;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Roots;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;

/**
 * The top of a leg, solved: how much the crotch seam and the rise give way so that the waist edge keeps its place at the side,
 * and front and back keep the lengths that were measured. Maths and figures: docs/maths/draft.md, "The top".
 */
final class Rise {
    /** Centre front and centre back together stand so far above the side, mm; and at most and at least (no source). */
    private static final double ENDS_UP = 18;

    private static final double MOST_UP = 72;
    private static final double LEAST_UP = -4;

    /** A rise that is too long for its crotch seam is taken in by so much more than the leg (no source). */
    private static final double MORE_OFF_RISE = 0.03;

    /** The inseam moves by at most this share of the crotch extension for the tilt's sake, and forward of half never. */
    private static final double SHARE_MOVES = 0.05;

    private static final double MOST_SHARE = 0.50;

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

    /**
     * A crotch length that was only estimated gives way by at most this share (no source); its own spread is larger, 39 mm of
     * some 700 (docs/maths/body.md).
     */
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
    private final Map<Place, Fork> forks = new HashMap<>();

    /** What a fork hangs on. */
    private record Place(double width, double share) {}

    Rise(Order order, Frame frame, LegCurves curves, double crotch) {
        this.order = order;
        this.frame = frame;
        this.curves = curves;
        this.body = order.body();
        this.style = order.style();
        this.scale = body.size();
        // where the body has it: a crotch line moved by hand leaves hip and waist where they are
        this.crotch = crotch + order.shift(Shift.CROTCH_LINE);
        this.radius = radius(body);
    }

    /** The least radius of the sewn crotch seam, mm. */
    static double radius(Body body) {
        return body.figure() == Figure.CHILD ? RADIUS_CHILD : RADIUS_ADULT;
    }

    private double leastWidth() {
        return Math.max(curves.grown(), frame.leastCrotch());
    }

    /** Solved for the give; then, where a bend is too tight, again with the inseam further back, and with a wider crotch line. */
    RiseTrial solved() {
        double width = leastWidth();
        double share = Frame.FRONT_EXTENSION_SHARE;
        RiseTrial trial = solved(width, share);
        if (trial.tightest() >= radius) {
            return trial;
        }
        if (trial.front().tightest() < trial.back().tightest()) {
            OptionalDouble further =
                    Roots.between(s -> solved(width, s).front().tightest() - radius, share, MOST_SHARE, COARSE);
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
    RiseTrial matching(Top top, double share) {
        double rise = (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist() - body.mm(Measure.CROTCH_HEIGHT))
                * (1 - top.riseTaken());
        double width = leastWidth();
        Fork fork = fork(width, share);
        double hip = hip(rise, top.riseTaken(), width);
        CrotchBend front = front(fork, hip, top.frontLength());
        CrotchBend back = back(fork, hip, top.backLength());
        return new RiseTrial(
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

    private RiseTrial solved(double width, double share) {
        double give = give(0, width, share);
        double above = order.stay().above();
        return at(above > 0 ? Math.max(give(2 * above, width, share), Math.min(loosest(), give)) : give, width, share);
    }

    /** At which front and back stand so far over the side, together, mm; the nearest end where none does. */
    private double give(double over, double width, double share) {
        if (at(1, width, share).over() >= over) {
            return 1;
        }
        if (at(-1, width, share).over() <= over) {
            return -1;
        }
        return Roots.between(g -> at(g, width, share).over() - over, -1, 1).orElseThrow();
    }

    /** An edge drawn above its place lets the crotch seam out no further than makers do. */
    private double loosest() {
        double usual = order.reductions().crotch();
        return usual > 0 ? 2 * (Math.min(usual, Reducing.LEAST_CROTCH_REDUCTION) / usual - 1) : -1;
    }

    private RiseTrial at(double give, double width, double share) {
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
        RisePlan plan = new RisePlan(
                give, scale, width, side, ends, crotchTaken, riseTaken, estimate, hip, front, back, frontUp, backUp);
        return tilted(plan, share, share - SHARE_MOVES, Math.min(MOST_SHARE, share + SHARE_MOVES));
    }

    private RiseTrial tilted(RisePlan plan, double share, double lower, double upper) {
        RiseTrial plain = drawn(plan, share, 0);
        double excess = plan.excess(plain);
        if (excess == 0) {
            return plain;
        }
        double end = excess > 0 ? upper : lower;
        RiseTrial moved = drawn(plan, end, 0);
        double left = plan.excess(moved);
        if (left == 0 || (left > 0) != (excess > 0)) {
            OptionalDouble s = Roots.between(
                    x -> plan.distance(drawn(plan, x, 0), excess > 0),
                    Math.min(share, end),
                    Math.max(share, end),
                    COARSE);
            return drawn(plan, s.orElse(end), 0);
        }
        double shift = 0;
        for (int i = 0; i < TILT_ROUNDS && Math.abs(left) > SAME; i++) {
            shift += left / 2;
            moved = drawn(plan, end, shift);
            left = plan.distance(moved, excess > 0);
        }
        return moved;
    }

    private RiseTrial drawn(RisePlan plan, double share, double shift) {
        Fork fork = fork(plan.width(), share);
        double gusset = GussetCut.shortening(style);
        double taken = plan.estimate() * (1 - plan.crotchTaken());
        double whole = crotchLength() * taken
                + plan.front()
                + plan.back()
                + gusset
                + order.moves().seamInFront()
                + order.moves().seamBehind();
        double behind = backLength() * taken
                + plan.width() / 2
                - frame.crotchFront(plan.width(), share)
                + plan.back()
                + gusset / 2
                + order.moves().seamBehind()
                - shift;
        CrotchBend front = front(fork, plan.hip(), whole - behind);
        CrotchBend back = back(fork, plan.hip(), behind);
        return new RiseTrial(
                plan.give(),
                fork,
                front,
                back,
                plan.side(),
                plan.ends(),
                plan.crotchTaken(),
                plan.riseTaken(),
                plan.estimate(),
                plan.hip(),
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
        return forks.computeIfAbsent(new Place(width, share), p -> Fork.of(curves, p.width(), p.share()));
    }

    /** Over the body, from top edge to top edge, mm. */
    private double crotchLength() {
        return body.mm(Measure.TOTAL_CROTCH_LENGTH) - 2 * style.dropBelowWaist();
    }

    private double backLength() {
        double back = body.isGiven(Measure.BACK_CROTCH_LENGTH)
                ? body.mm(Measure.BACK_CROTCH_LENGTH)
                : Body.BACK_OF_CROTCH * body.mm(Measure.TOTAL_CROTCH_LENGTH);
        return back - style.dropBelowWaist();
    }
}
