package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.TopEnd;

/** Why the parts of the top are as long as they are. */
final class TopReasons {
    private static final String NOTE = "docs/maths/draft.md, Bands";
    private static final String PRACTICE = NOTE + "; common practice, no source";

    private TopReasons() {}

    static List<Reason> contoured(Order order, Contour contour, double topEdge) {
        double girth = Frame.topGirth(order.body(), order.style());
        Reason.Input taken =
                new Reason.Input("waistband reduction", 100 * order.reductions().waistband(), "%", "fabric");
        List<Reason.Input> body = body(order);
        List<Reason.Input> lower = new ArrayList<>(body);
        lower.add(new Reason.Input("girth at the top edge, in proportion between waist and hip", girth, "mm", "rule"));
        lower.add(taken);
        lower.add(new Reason.Input("legs' top edge", topEdge, "mm", "rule"));
        List<Reason.Input> upper = new ArrayList<>(body);
        upper.add(new Reason.Input(
                "girth at the upper edge, in proportion between waist and hip",
                TopFinish.upperGirth(order),
                "mm",
                "rule"));
        upper.add(taken);
        upper.add(new Reason.Input("lower edge", contour.lower(), "mm", "waistband: lower edge all round"));
        return List.of(
                new Reason(
                        "waistband: lower edge all round",
                        contour.lower(),
                        "girth at the top edge x (1 - reduction), at most the legs' top edge",
                        lower,
                        NOTE),
                new Reason(
                        "waistband: upper edge all round",
                        contour.upper(),
                        "girth at the upper edge x (1 - reduction), taken in as much as the lower edge",
                        upper,
                        NOTE),
                new Reason(
                        "waistband: height",
                        contour.height(),
                        "as asked for; the difference of the two radii of the unrolled frustum",
                        List.of(new Reason.Input("waistband height", contour.height(), "mm", "style")),
                        NOTE));
    }

    private static List<Reason.Input> body(Order order) {
        List<Reason.Input> inputs = new ArrayList<>();
        for (Measure m : List.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.WAIST_HEIGHT, Measure.HIP_HEIGHT)) {
            inputs.add(new Reason.Input(
                    m.term(), order.body().mm(m), "mm", order.body().isGiven(m) ? "measured" : "estimated"));
        }
        inputs.add(new Reason.Input("rise below the waist", order.style().dropBelowWaist(), "mm", "style"));
        inputs.add(new Reason.Input("waistband height", order.style().bandHeight(), "mm", "style"));
        return inputs;
    }

    static List<Reason> casing(Order order, List<LegSet> legs) {
        List<Reason> out = new ArrayList<>();
        for (LegSet set : legs) {
            Piece leg = set.with("waist edge");
            Edge edge = leg.edge("waist edge");
            out.add(new Reason(
                    leg.name() + ": turned down at the waist",
                    edge.allowance(),
                    "height of the casing and 6 mm for the row over the raw edge",
                    List.of(new Reason.Input("casing height", order.style().bandHeight(), "mm", "style")),
                    PRACTICE));
        }
        return out;
    }

    static List<Reason> keyPocket(TopEnd.Band band) {
        return List.of(
                new Reason(
                        "key pocket: width",
                        band.keyPocket().orElseThrow(),
                        "as asked for",
                        List.of(new Reason.Input("key pocket", band.keyPocket().orElseThrow(), "mm", "style")),
                        NOTE),
                new Reason(
                        "key pocket: depth",
                        band.pocketDepth(),
                        "height of the band less what elastic or cord take up, less 10 mm",
                        List.of(
                                new Reason.Input("waistband height", band.height(), "mm", "style"),
                                new Reason.Input("elastic or cord", band.channel(), "mm", "style")),
                        PRACTICE));
    }

    static Reason elastic(Order order, double ring, double width) {
        double girth = Frame.topGirth(order.body(), order.style());
        return new Reason(
                "waist elastic: cut length",
                ring + TopFinish.LAP,
                "girth at the top edge x share, at least hip girth / 1.85 so that it passes, at most the cloth it lies in; and"
                        + " 20 mm to lap the ends",
                List.of(
                        new Reason.Input(
                                "girth at the top edge, in proportion between waist and hip", girth, "mm", "rule"),
                        new Reason.Input(
                                "share for this hold",
                                100
                                        * TopFinish.elasticShare(
                                                order.style().hold().named()),
                                "%",
                                "style"),
                        new Reason.Input(
                                "hip girth",
                                order.body().mm(Measure.HIP_GIRTH),
                                "mm",
                                order.body().isGiven(Measure.HIP_GIRTH) ? "measured" : "estimated"),
                        new Reason.Input("cloth at the waist", width, "mm", "rule")),
                "trade handbooks: 90 % soft, 80 to 85 % active; " + NOTE);
    }

    static Reason cord(double girth, double end) {
        return new Reason(
                "cord: cut length",
                girth + 2 * end,
                "girth at the top edge and two ends of 200 mm to tie",
                List.of(new Reason.Input(
                        "girth at the top edge, in proportion between waist and hip", girth, "mm", "rule")),
                PRACTICE);
    }
}
