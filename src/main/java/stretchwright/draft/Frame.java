package stretchwright.draft;

import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/**
 * The upright lines of the top: half the hip, where centre front and centre back stand, how the waist is shaped. The
 * rules and their sources: docs/maths/draft.md, "The frame". Shares marked [T] were tried on the 1,762 women of the 1988
 * survey and kept because every one of them drafts; they have no published source.
 *
 * @param hip half of the flat hip, mm
 * @param slantFront how far the centre front leans in from hip to waist, mm; negative: out, where the waist is larger
 * @param slantBack the same for the centre back
 * @param leanAtHip the centre back leans at the hip line this many times as much as on the whole, and at the waist 2
 *     minus that: a parabola, which bends the same way as the hook below it; 1 for a straight one
 * @param outFront how far the maker moved the centre front out at the hip, mm
 * @param outBack the same behind
 */
record Frame(double hip, double slantFront, double slantBack, double leanAtHip, double outFront, double outBack) {
    /** Of half the hip, from the side line to the centre front: the seat is behind it [T]. */
    private static final double FRONT_SHARE = 0.48;

    /** Of the crotch extension, in front: the back one is always the larger, as the seat is [T]. */
    static final double FRONT_EXTENSION_SHARE = 0.38;

    /** The crotch extensions together are at least this share of half the hip, so that the hooks have room [T]. */
    private static final double LEAST_EXTENSION = 0.16;

    /** Of hip minus waist, leaned in at the centre front: the belly is round and takes little [T]. */
    private static final double FRONT_TAKES = 0.15;

    /** At most, as a share of half the hip: beyond it the front seam would stand off the belly [T]. */
    private static final double FRONT_AT_MOST = 0.035;

    /** Of hip minus waist, leaned in at the centre back, over the hollow of the back [T]. */
    private static final double BACK_TAKES = 0.45;

    /** At most, as a share of half the hip, for a straight centre back [T]. */
    private static final double BACK_AT_MOST = 0.09;

    /** At most, as a share of half the hip, for a curved one: 0.07 more than the straight (common practice, no source). */
    private static final double CURVED_AT_MOST = 0.16;

    private static final Said SOURCE = Tell.said("source.frame");

    static Frame of(Order order) {
        Body body = order.body();
        Style style = order.style();
        double tight = 1 - order.reductions().across();
        double hip = order.holding().at(Level.Name.HIP).width() / 2;
        double spare = hip - (topGirth(body, style) * tight + ease(style)) / 2;
        double front = within(FRONT_TAKES * spare, FRONT_AT_MOST * hip);
        double outFront = order.shift(Shift.FRONT_HIP);
        double outBack = order.shift(Shift.BACK_HIP);
        double back = within(BACK_TAKES * spare, BACK_AT_MOST * hip);
        if (style.top().back() != TopEnd.BackShape.SHAPED_SEAM) {
            return new Frame(hip, front + outFront, back + outBack, 1, outFront, outBack);
        }
        double surplus = Math.max(0, hip - front - back - band(order) / 2);
        double more = Math.min(surplus, Math.max(0, CURVED_AT_MOST * hip - back));
        return new Frame(
                hip,
                front + outFront,
                back + more + outBack,
                more > 0 ? 1 + more / (back + more) : 1,
                outFront,
                outBack);
    }

    /** Girth of the body where the leg's top edge sits: the waist, or in proportion towards the hip below it. */
    static double topGirth(Body body, Style style) {
        return TrunkProfile.of(body).girthBelowWaist(style.dropBelowWaist());
    }

    static Input topGirthInput(Order order) {
        return Inputs.rule(Tell.said("input.girth-at-top"), topGirth(order.body(), order.style()));
    }

    boolean curvedBack() {
        return leanAtHip > 1;
    }

    /**
     * The length, all round, of a band that holds at the top edge; where the hips are much larger it is wider, so that they
     * pass at an easy pull, as long as it still holds. Ease of the wearer's own is added, as long as it holds with that.
     */
    static double band(Order order) {
        double girth = topGirth(order.body(), order.style());
        double held = girth * (1 - order.reductions().waistband());
        double passes = Reducing.narrowestFor(order.body().mm(Measure.HIP_GIRTH), order.bandStretch());
        double most = Reducing.STILL_HOLDS * girth;
        return Math.min(most, Math.max(held, Math.min(passes, most)) + ease(order.style()));
    }

    /** What the wearer wants added to the top edge, all round, mm. */
    static double ease(Style style) {
        return style.ease().getOrDefault(Level.Name.WAIST, 0.0);
    }

    static Optional<Input> easeInput(Style style) {
        return ease(style) == 0
                ? Optional.empty()
                : Optional.of(Inputs.style(Tell.said("input.ease", Level.Name.WAIST.said()), ease(style)));
    }

    private static double within(double value, double limit) {
        return Math.max(-limit, Math.min(limit, value));
    }

    /** Why the crotch line is so wide. */
    Reason crotchWidth(Order order, double width, double thigh) {
        Ruled ruled = Ruled.of(
                width,
                Tell.said("rule.crotch-width", Part.number(1 + LEAST_EXTENSION, 2)),
                SOURCE,
                Inputs.length(order.its(Dimension.What.THIGH_WIDTH), thigh),
                half(order));
        return order.moves()
                .told(ruled, Shift.FRONT_CROTCH_POINT, Shift.BACK_CROTCH_POINT)
                .reason(order.its(Dimension.What.CROTCH_WIDTH));
    }

    /** The crotch line is at least so wide, mm: the hooks need room. */
    double leastCrotch() {
        return hip * (1 + LEAST_EXTENSION);
    }

    /** Of a leg still in one piece. */
    Reason waistEdge(Order order, Piece leg) {
        Ruled ruled = Ruled.of(
                LegSet.of(leg).length(EdgeName.WAIST_EDGE),
                Tell.said("rule.waist-edge"),
                SOURCE,
                half(order),
                Inputs.rule(Tell.said("input.front-leans"), slantFront),
                Inputs.rule(Tell.said("input.back-leans"), slantBack));
        double side = order.body().mm(Measure.WAIST_HEIGHT);
        if (order.body().stance().frontWaist().isPresent()) {
            double above = order.body().stance().frontAbove(side);
            ruled = ruled.with(Inputs.measured(Tell.said("input.front-waist-above"), above));
        }
        if (order.body().stance().backWaist().isPresent()) {
            double above = order.body().stance().backAbove(side);
            ruled = ruled.with(Inputs.measured(Tell.said("input.back-waist-above"), above));
        }
        return order.moves().told(ruled, Shift.SIDE_WAIST).reason(order.its(Dimension.What.WAIST_EDGE_LENGTH));
    }

    private Input half(Order order) {
        return new Input(Tell.said("input.half-flat-hip"), hip, "mm", order.hipWidth());
    }

    double hipFront() {
        return -FRONT_SHARE * hip - outFront;
    }

    double hipBack() {
        return (1 - FRONT_SHARE) * hip + outBack;
    }

    double waistFront() {
        return hipFront() + slantFront;
    }

    /** How far in front of the side line the front crotch point lies under a crotch line of the given width, mm. */
    double crotchFront(double width, double share) {
        return FRONT_SHARE * hip + share * (width - hip);
    }

    /** The middle of a crotch line of the given width, behind the side line. */
    double crotchMiddle(double width, double share) {
        return width / 2 - crotchFront(width, share);
    }

    double waistBack() {
        return hipBack() - slantBack;
    }
}
