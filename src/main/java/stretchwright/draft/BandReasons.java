package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** Why straight bands and cuffs are as long and high as they are, and what each part of a cut leg got of its edges. */
final class BandReasons {
    private static final String SOURCE = "docs/maths/draft.md, Bands";

    private BandReasons() {}

    static List<Reason> straight(Order order, double length, double topEdge) {
        double girth = Frame.topGirth(order.body(), order.style());
        return List.of(
                new Reason(
                        "waistband: length",
                        length,
                        "the larger of girth at the top edge x (1 - reduction) and hip girth / (1 + 0.85 x stretch across), which lets"
                                + " the hips pass; at most 0.98 x the girth, so that it holds, and at most the legs' top edge",
                        List.of(
                                new Input(
                                        "girth at the top edge, in proportion between waist and hip",
                                        girth,
                                        "mm",
                                        "rule"),
                                new Input(
                                        ReductionReasons.BAND,
                                        100 * order.reductions().waistband(),
                                        "%",
                                        ReductionReasons.BAND),
                                LegReasons.measure(order.body(), Measure.WAIST_GIRTH),
                                LegReasons.measure(order.body(), Measure.HIP_GIRTH),
                                new Input("stretch across", 100 * order.fabric().stretchAcross(), "%", "fabric"),
                                new Input("legs' top edge, all round", topEdge, "mm", "rule")),
                        SOURCE),
                folded("waistband", order.style().bandHeight()));
    }

    /** The inner layer of a contoured band is the outer one again. */
    static Reason facing(double lower) {
        return new Reason(
                "waistband facing: lower edge all round",
                lower,
                "the waistband's own, layer on layer",
                List.of(new Input("waistband", lower, "mm", "waistband: lower edge all round")),
                SOURCE);
    }

    static List<Reason> cuffs(List<Piece> cuffs, List<LegSet> legs, double height) {
        List<Reason> out = new ArrayList<>();
        for (int i = 0; i < cuffs.size(); i++) {
            LegSet leg = legs.get(cuffs.get(i).name().startsWith("right") ? legs.size() - 1 : 0);
            double hem = leg.length("hem");
            out.add(new Reason(
                    cuffs.get(i).name() + ": length",
                    cuffs.get(i).edge("lower edge").length(),
                    "as long as the leg's lower edge",
                    List.of(new Input("hem length", hem, "mm", leg.which() + "leg: hem length")),
                    SOURCE));
            out.add(folded(cuffs.get(i).name(), height));
        }
        return out;
    }

    private static Reason folded(String piece, double height) {
        return new Reason(
                piece + ": height",
                2 * height,
                "2 x finished height: it is folded",
                List.of(new Input("finished height", height, "mm", "style")),
                SOURCE);
    }

    /** Where a leg is cut into parts: each part's share of the edges that were whole before. */
    static List<Reason> shares(LegSet leg) {
        List<Reason> out = new ArrayList<>();
        if (leg.pieces().size() == 1) {
            return out;
        }
        for (Piece part : leg.pieces()) {
            for (String edge : List.of("waist edge", "hem")) {
                String whole = leg.which() + "leg: " + edge + " length";
                double length = new LegSet(leg.which(), leg.cut(), List.of(part)).length(edge);
                out.add(new Reason(
                        part.name() + ": " + edge + " length",
                        length,
                        "its part of the leg's edge" + (edge.equals("hem") ? "" : ", less what the side takes in"),
                        List.of(new Input("all parts of the leg", leg.length(edge), "mm", whole)),
                        "docs/maths/draft.md, Parts"));
            }
        }
        return out;
    }
}
