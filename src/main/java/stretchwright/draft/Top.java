package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Reason.Origin;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/**
 * The top of the leg, solved: the hook's fullness so that the side keeps its measured height, the height of the centre
 * front so that the whole crotch seam has its target length.
 *
 * @param fullness of both hooks
 * @param correction how far the waist edge at the side lies above its measured place, mm; 0 where the hook could take
 *     the whole length
 */
record Top(Path frontCrotch, Path backCrotch, Path waistEdge, double hipHeight, double fullness, double correction) {
    /** The handles of the hook, as a share of the way to where its end tangents cross: less is a chamfer, not a hook. */
    private static final double LEAST_FULLNESS = 0.40;

    /** More is a corner, not a curve; both bounds looked at on the survey's drafts, no source. */
    private static final double MOST_FULLNESS = 0.78;

    /** The centre seams run straight for at least this much below the waist, mm: what a band's join needs (no source). */
    private static final double LEAST_STRAIGHT = 15;

    /**
     * Beyond this, mm, heights and crotch length cannot belong to one body: some five times what 95 % of the survey women
     * of 1988 stay below (23 mm).
     */
    private static final double LARGEST_CORRECTION = 120;

    /** Centre back over centre front: 3 % of the hip girth, some 30 mm (docs/maths/draft.md, "The top"; no source). */
    private static final double TILT_PER_HIP = 0.03;

    /**
     * Who sits all day needs more behind and less in front, mm: the back 40 mm higher, the front 20 mm lower, the middles
     * of the ranges people give (back 30 to 50, front 15 to 30; common practice, no source).
     */
    private static final double SEATED_TILT = 60;

    /** What that adds to the crotch seam, mm: 40 behind less 20 in front. */
    private static final double SEATED_LENGTH = 20;

    /** Bounds of the tilt, mm: a level edge looks too low behind, a steeper one slides (no source). */
    private static final double LEAST_TILT = 10;

    private static final double MOST_TILT = 65;

    /** The hip line of the draft stands between these shares of the way from crotch to waist (no source). */
    private static final double LOWEST_HIP = 0.15;

    private static final double HIGHEST_HIP = 0.60;

    private static final Said SOURCE = Tell.said("source.top");

    static Optional<Top> solve(
            Body body,
            Style style,
            Pattern.Reductions r,
            Frame frame,
            TopCurves.Hook front,
            TopCurves.Hook back,
            Findings findings) {
        double flat = 1 - r.along();
        double waist = (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist()) * flat;
        double hip = hipLine(body.mm(Measure.HIP_HEIGHT) * flat, waist, frame, front, back);
        if (hip > waist - LEAST_STRAIGHT) {
            findings.add(
                    style.dropBelowWaist() > 0 ? "style.rise" : "wearer.measurements.waist height",
                    Tell.said(
                            "top.no-seat",
                            Part.length(body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist()),
                            Part.length(body.mm(Measure.CROTCH_HEIGHT))),
                    Tell.said("top.no-seat-help"));
            return Optional.empty();
        }
        double target = crotchTarget(body, style, r) + GussetCut.shortening(style);
        TopCurves curves = new TopCurves(frame, hip, tilt(body), front, back);

        double fullness = fullness(curves, hip, waist, target);
        OptionalDouble height = heightFor(curves, fullness, hip, target);
        double correction =
                height.isPresent() ? curves.sideHeight(height.getAsDouble()) - waist : Double.NEGATIVE_INFINITY;
        if (!(Math.abs(correction) <= LARGEST_CORRECTION)) {
            notClosed(body, style, findings);
            return Optional.empty();
        }
        return raised(style.top(), 1 - r.crotch(), hip, curves, height.getAsDouble(), fullness, target, findings)
                .map(c -> new Top(c.front, c.back, c.edge, hip, fullness, correction));
    }

    private static void notClosed(Body body, Style style, Findings findings) {
        Part[] parts = {
            Part.length(body.mm(Measure.TOTAL_CROTCH_LENGTH)),
            Part.length(body.mm(Measure.WAIST_HEIGHT)),
            Part.length(body.mm(Measure.HIP_HEIGHT)),
            Part.length(body.mm(Measure.CROTCH_HEIGHT))
        };
        if (style.dropBelowWaist() > 0) {
            findings.add("style.rise", Tell.said("top.not-closed-low", parts), Tell.said("top.not-closed-low-help"));
        } else {
            findings.add(
                    "wearer.measurements.total crotch length",
                    Tell.said("top.not-closed", parts),
                    Tell.said("top.not-closed-help"));
        }
    }

    private record Lines(Path front, Path back, Path edge) {}

    /**
     * Centre front and centre back as much higher or lower as was asked for: the crotch seam grows by both, reduced like
     * itself, the hooks and the side stay.
     */
    private static Optional<Lines> raised(
            TopEnd top,
            double taken,
            double hip,
            TopCurves usual,
            double usualHeight,
            double fullness,
            double target,
            Findings findings) {
        double front = top.frontRaise() * taken;
        double back = top.backRaise() * taken;
        TopCurves curves = front == 0 && back == 0 ? usual : usual.tilted(back - front);
        OptionalDouble height = curves == usual
                ? OptionalDouble.of(usualHeight)
                : heightFor(curves, fullness, hip, target + front + back);
        if (height.isEmpty()) {
            boolean inFront = top.frontRaise() < top.backRaise();
            findings.add(
                    inFront ? "style.front waist" : "style.back waist",
                    inFront
                            ? Tell.said(
                                    "top.lowered-front", Part.length(top.frontRaise()), Part.length(top.backRaise()))
                            : Tell.said(
                                    "top.lowered-back", Part.length(top.frontRaise()), Part.length(top.backRaise())),
                    Tell.said("top.lowered-help"));
            return Optional.empty();
        }
        double h = height.getAsDouble();
        return Optional.of(
                new Lines(curves.frontCrotch(h, fullness), curves.backCrotch(h, fullness), curves.waistEdge(h)));
    }

    /** Length that front and back crotch curve must have together, mm. */
    static double crotchTarget(Body body, Style style, Pattern.Reductions r) {
        return (body.mm(Measure.TOTAL_CROTCH_LENGTH) - 2 * style.dropBelowWaist()) * (1 - r.crotch())
                + (body.seated() ? SEATED_LENGTH : 0);
    }

    /** Why the crotch seam and its two curves are as long as they are drawn. */
    List<Reason> reasons(Order order, Piece leg) {
        Pattern.Reductions r = order.reductions();
        TopEnd top = order.style().top();
        double front = leg.edge("front crotch").length();
        double back = leg.edge("back crotch").length();
        double gusset = GussetCut.shortening(order.style());
        Ruled seam = Ruled.of(
                front + back,
                seamRule(order, gusset),
                SOURCE,
                Inputs.measure(order.body(), Measure.TOTAL_CROTCH_LENGTH),
                Inputs.style(Tell.said("input.drop-below-waist"), order.style().dropBelowWaist()),
                Inputs.style(Tell.said("input.front-waist"), top.frontRaise()),
                Inputs.style(Tell.said("input.back-waist"), top.backRaise()),
                Inputs.share(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM), r.crotch()),
                Inputs.style(Tell.said("input.gusset-shorter"), gusset));
        Input whole = Inputs.length(order.its(What.CROTCH_SEAM_LENGTH), front + back);
        Input hooks = new Input(Tell.said("input.fullness"), fullness, "", Origin.RULE);
        Input ofFront = Inputs.length(order.its(What.FRONT_CROTCH_LENGTH), front);
        return List.of(
                seam.reason(order.its(What.CROTCH_SEAM_LENGTH)),
                Ruled.of(front, Tell.said("rule.front-crotch"), SOURCE, whole, hooks)
                        .reason(order.its(What.FRONT_CROTCH_LENGTH)),
                Ruled.of(back, Tell.said("rule.back-crotch"), SOURCE, whole, ofFront)
                        .reason(order.its(What.BACK_CROTCH_LENGTH)));
    }

    private static Said seamRule(Order order, double gusset) {
        Said rule = Tell.said("rule.crotch-seam");
        if (gusset > 0) {
            rule = Tell.said("rule.crotch-seam-gusset", rule);
        }
        if (order.body().seated()) {
            rule = Tell.said("rule.crotch-seam-seated", rule, Part.length(SEATED_LENGTH));
        }
        return order.body().legs().alike() ? rule : Tell.said("rule.crotch-seam-mean", rule);
    }

    /** Centre back above centre front, mm. A measured back crotch length does not move it: its landmark is not the draft's. */
    private static double tilt(Body body) {
        double usual = TILT_PER_HIP * body.mm(Measure.HIP_GIRTH);
        return Math.max(LEAST_TILT, Math.min(MOST_TILT, usual)) + (body.seated() ? SEATED_TILT : 0);
    }

    /**
     * The top of a leg whose crotch curves must be as long as those of another top, so that a left and a right leg that
     * differ can be sewn together.
     */
    static Optional<Top> matching(
            Top other, double waist, Frame frame, double hipHeight, TopCurves.Hook front, TopCurves.Hook back) {
        double hip = hipLine(hipHeight, waist, frame, front, back);
        double wantFront = other.frontCrotch.length();
        double wantBack = other.backCrotch.length();
        TopCurves level = new TopCurves(frame, hip, 0, front, back);
        OptionalDouble h = Roots.highest(
                y -> level.frontCrotch(y, other.fullness).length() - wantFront, level.lowestFront(), hip + wantFront);
        OptionalDouble backHeight = Roots.highest(
                y -> level.backCrotch(y, other.fullness).length() - wantBack, level.lowestBack(), hip + wantBack);
        if (h.isEmpty() || backHeight.isEmpty()) {
            return Optional.empty();
        }
        double y = h.getAsDouble();
        TopCurves curves = new TopCurves(frame, hip, backHeight.getAsDouble() - y, front, back);
        return Optional.of(new Top(
                curves.frontCrotch(y, other.fullness),
                curves.backCrotch(y, other.fullness),
                curves.waistEdge(y),
                hip,
                other.fullness,
                curves.sideHeight(y) - waist));
    }

    /**
     * The hip line of the draft: the measured hip height, kept so far above the crotch that the hooks have room and so
     * far below the waist that a straight part stays.
     */
    private static double hipLine(
            double measured, double waist, Frame frame, TopCurves.Hook front, TopCurves.Hook back) {
        double crotch = front.point().y();
        double rise = waist - crotch;
        double low = Math.max(lowestFor(front, frame.hipFront(), crotch), lowestFor(back, frame.hipBack(), crotch));
        low = Math.max(low, crotch + LOWEST_HIP * rise);
        double high = Math.max(low, crotch + HIGHEST_HIP * rise);
        return Math.max(low, Math.min(high, measured));
    }

    private static double lowestFor(TopCurves.Hook hook, double hipX, double crotch) {
        double extension = Math.abs(hook.point().x() - hipX);
        return crotch + (1.1 * Math.max(0, hook.flare()) + 0.2) * extension;
    }

    private static OptionalDouble heightFor(TopCurves curves, double fullness, double hip, double target) {
        return Roots.highest(h -> curves.length(h, fullness) - target, curves.lowestWaist(), hip + target);
    }

    /** The fullness that leaves the side at its measured height; a bound of it where none does. */
    private static double fullness(TopCurves curves, double hip, double waist, double target) {
        java.util.function.DoubleUnaryOperator over = f -> {
            OptionalDouble h = heightFor(curves, f, hip, target);
            return h.isPresent() ? curves.sideHeight(h.getAsDouble()) - waist : -1e3;
        };
        double atLeast = over.applyAsDouble(LEAST_FULLNESS);
        if (atLeast <= 0) {
            return LEAST_FULLNESS;
        }
        if (over.applyAsDouble(MOST_FULLNESS) >= 0) {
            return MOST_FULLNESS;
        }
        return Roots.between(over, LEAST_FULLNESS, MOST_FULLNESS).orElse(LEAST_FULLNESS);
    }
}
