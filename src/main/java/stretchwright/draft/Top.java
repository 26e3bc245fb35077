package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/**
 * The top of the leg: one faired crotch curve through the crotch point, as long as front and back were measured, and a waist
 * edge at its place.
 *
 * @param hipHeight of the hip line on the flat piece, mm
 * @param side height of the waist edge above the side line, mm
 * @param miss how far that lies above its measured place, mm; 0 where crotch seam and rise could give way enough
 * @param crotchTaken share taken off the crotch seam
 * @param riseTaken share taken off the rise between crotch line and top edge
 * @param estimate so many times its estimate the total crotch length was taken; 1 where it was measured
 * @param backOff by how much the back is longer than its measure asks, mm flat; 0 where it stands no higher or lower than a back can
 * @param beforeMiddle how far the inseam lies before the inner middle of the leg on the crotch line, mm
 * @param tightest least radius of the crotch curve, mm
 */
record Top(
        Path frontCrotch,
        Path backCrotch,
        Path waistEdge,
        double hipHeight,
        double side,
        double miss,
        double crotchTaken,
        double riseTaken,
        double estimate,
        double backOff,
        double beforeMiddle,
        double tightest) {
    /** The centre seams run straight for at least this much below the waist, mm: what a band's join needs (no source). */
    private static final double LEAST_STRAIGHT = 15;

    /**
     * Beyond this, mm, heights and crotch length cannot belong to one body: of 13,320 adults in cloth of 60/45 % three in ten
     * thousand miss by more than 40. From 25 on the fit check stops.
     */
    private static final double LARGEST_MISS = 120;

    private static final Said SOURCE = Tell.said("source.top");

    /** Of a leg whose fork is solved with it; empty with a finding where the measures leave no room. */
    static Optional<Top> of(Order order, RiseTrial trial, Findings findings) {
        Body body = order.body();
        Style style = order.style();
        double miss = Math.abs(trial.over()) < 1e-3 ? 0 : trial.over() / 2;
        boolean raised = order.frontRaise() != 0 || order.backRaise() != 0;
        boolean roomy = trial.side() - trial.hipHeight() > LEAST_STRAIGHT;
        if (roomy && raised && !trial.isDrawn(LEAST_STRAIGHT)) {
            boolean inFront = order.frontRaise() < order.backRaise();
            findings.add(
                    inFront ? "style.front waist" : "style.back waist",
                    inFront
                            ? Tell.said(
                                    "top.lowered-front",
                                    Part.length(order.frontRaise()),
                                    Part.length(order.backRaise()))
                            : Tell.said(
                                    "top.lowered-back",
                                    Part.length(order.frontRaise()),
                                    Part.length(order.backRaise())),
                    Tell.said("top.lowered-help"));
            return Optional.empty();
        }
        if (!roomy) {
            findings.add(
                    style.dropBelowWaist() > 0 ? "style.rise" : "wearer.measurements.waist height",
                    Tell.said(
                            "top.no-seat",
                            Part.length(body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist()),
                            Part.length(body.mm(Measure.CROTCH_HEIGHT))),
                    Tell.said("top.no-seat-help"));
            return Optional.empty();
        }
        if (!(Math.abs(miss) <= LARGEST_MISS) || !trial.isDrawn(LEAST_STRAIGHT)) {
            if (!MovesCheck.blamed(order, findings)) {
                notClosed(body, style, findings);
            }
            return Optional.empty();
        }
        return Optional.of(of(trial, trial.side() + miss, miss, order.shift(Shift.SIDE_WAIST)));
    }

    private static Top of(RiseTrial trial, double side, double miss, double moved) {
        Point front = trial.front().top();
        Point back = trial.back().top();
        Path edge = WaistEdge.through(
                new Point(-front.x(), front.y()),
                -StrictMath.tan(trial.front().leanAtWaist()),
                side + moved,
                back,
                StrictMath.tan(trial.back().leanAtWaist()));
        return new Top(
                trial.front().path(-1),
                trial.back().path(1),
                edge,
                trial.hipHeight(),
                side + moved,
                miss,
                trial.crotchTaken(),
                trial.riseTaken(),
                trial.estimate(),
                trial.backOff(),
                trial.fork().width() / 2 - trial.fork().frontOut().x(),
                trial.tightest());
    }

    /** Of a leg that is sewn to another one: halves as long as its, the side as far below its ends. */
    static Top matching(Top other, RiseTrial trial, double moved) {
        double ends = (trial.front().waist() + trial.back().waist()) / 2;
        double others = (other.waistEdge.start().y() + other.waistEdge.end().y()) / 2;
        double side = ends - (others - other.side);
        return of(trial, side - moved, side - moved - trial.side(), moved);
    }

    double frontLength() {
        return frontCrotch.length();
    }

    double backLength() {
        return backCrotch.length();
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

    /** Length that front and back crotch curve have together, mm: as the body asks, and as was asked for beside. */
    static double crotchTarget(Body body, Style style, Pattern pattern) {
        double raised = style.top().frontRaise()
                + style.top().backRaise()
                + pattern.shift(Shift.FRONT_WAIST)
                + pattern.shift(Shift.BACK_WAIST);
        return (body.mm(Measure.TOTAL_CROTCH_LENGTH) - 2 * style.dropBelowWaist() + raised)
                        * (1 - pattern.reductions().crotch())
                + pattern.shift(Shift.FRONT_CROTCH_POINT)
                + pattern.shift(Shift.BACK_CROTCH_POINT)
                + 2 * pattern.shift(Shift.CROTCH_LINE)
                + (body.seated() ? Rise.SEATED_FRONT + Rise.SEATED_BACK : 0);
    }

    /** Why the crotch seam and its two curves are as long as they are drawn. */
    List<Reason> reasons(Order order, Piece leg) {
        Pattern.Reductions r = order.reductions();
        TopEnd top = order.style().top();
        double front = leg.edge(EdgeName.FRONT_CROTCH).length();
        double back = leg.edge(EdgeName.BACK_CROTCH).length();
        double gusset = GussetCut.shortening(order.style());
        Ruled seam = Ruled.of(
                front + back,
                seamRule(order, gusset),
                SOURCE,
                total(order.body()),
                Inputs.style(Tell.said("input.drop-below-waist"), order.style().dropBelowWaist()),
                Inputs.style(Tell.said("input.front-waist"), top.frontRaise()),
                Inputs.style(Tell.said("input.back-waist"), top.backRaise()),
                Inputs.share(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM), r.crotch()),
                Inputs.style(Tell.said("input.gusset-shorter"), gusset));
        seam = order.moves()
                .told(
                        seam,
                        Shift.FRONT_WAIST,
                        Shift.BACK_WAIST,
                        Shift.FRONT_CROTCH_POINT,
                        Shift.BACK_CROTCH_POINT,
                        Shift.CROTCH_LINE);
        Input whole = Inputs.length(order.its(What.CROTCH_SEAM_LENGTH), front + back);
        boolean measured = order.body().isGiven(Measure.BACK_CROTCH_LENGTH);
        Input ofBack = Inputs.length(order.its(What.BACK_CROTCH_LENGTH), back);
        Input taken = Inputs.share(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM), r.crotch());
        Input before = Inputs.rule(Tell.said("input.inseam-before-middle"), beforeMiddle);
        return List.of(
                seam.reason(order.its(What.CROTCH_SEAM_LENGTH)),
                Ruled.of(front, Tell.said("rule.front-crotch"), SOURCE, whole, ofBack)
                        .reason(order.its(What.FRONT_CROTCH_LENGTH)),
                Ruled.of(
                                back,
                                measured
                                        ? Tell.said("rule.back-crotch")
                                        : Tell.said("rule.back-crotch-share", Part.share(Body.BACK_OF_CROTCH)),
                                SOURCE,
                                Inputs.measure(
                                        order.body(),
                                        measured ? Measure.BACK_CROTCH_LENGTH : Measure.TOTAL_CROTCH_LENGTH),
                                taken,
                                before)
                        .reason(order.its(What.BACK_CROTCH_LENGTH)));
    }

    /** As measured; or as estimated, and then as it gave way for a waist edge at its place. */
    private Input total(Body body) {
        Input plain = Inputs.measure(body, Measure.TOTAL_CROTCH_LENGTH);
        return estimate == 1
                ? plain
                : new Input(
                        Tell.said("input.estimate-gives", plain.name()),
                        plain.value() * estimate,
                        plain.unit(),
                        plain.from());
    }

    private static Said seamRule(Order order, double gusset) {
        Said rule = Tell.said("rule.crotch-seam");
        if (gusset > 0) {
            rule = Tell.said("rule.crotch-seam-gusset", rule);
        }
        if (order.body().seated()) {
            rule = Tell.said("rule.crotch-seam-seated", rule, Part.length(Rise.SEATED_FRONT + Rise.SEATED_BACK));
        }
        return order.body().legs().alike() ? rule : Tell.said("rule.crotch-seam-mean", rule);
    }
}
