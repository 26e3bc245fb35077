package stretchwright.draft;

import java.util.List;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;

/** Why the parts of a leg are as large as they are. */
final class PartReasons {
    private static final String DOC = "docs/maths/draft.md, Parts";

    private PartReasons() {}

    static Reason panel(double width) {
        return new Reason(
                "side panel: width",
                width,
                "as asked, half to each side of the side line",
                style("panel width", width),
                DOC);
    }

    static List<Reason> gusset(Parts.Gusset g) {
        return List.of(
                new Reason("gusset: length", g.length(), "as asked", style("gusset length", g.length()), DOC),
                new Reason("gusset: width", g.width(), "as asked", style("gusset width", g.width()), DOC));
    }

    static List<Reason> gusset(Piece leg, Parts.Gusset g, double taken) {
        String prefix = leg.name() + ": ";
        double reach = GussetCut.reach(g);
        List<Reason.Input> inputs = List.of(
                new Reason.Input("gusset length", g.length(), "mm", "gusset: length"),
                new Reason.Input("gusset width", g.width(), "mm", "gusset: width"));
        return List.of(
                new Reason(
                        prefix + "gusset takes of each crotch curve",
                        reach,
                        "square root of (length / 2) squared + 0.75 x (width / 2) squared",
                        inputs,
                        DOC),
                new Reason(
                        prefix + "gusset takes of each inseam",
                        taken,
                        "solved: a kite of this length and width has edges as long as the cuts",
                        inputs,
                        DOC),
                new Reason(
                        prefix + "room from the gusset",
                        g.width() - 2 * taken,
                        "gusset width - 2 x what goes off each inseam",
                        List.of(
                                inputs.get(1),
                                new Reason.Input(
                                        "taken of each inseam", taken, "mm", prefix + "gusset takes of each inseam")),
                        DOC));
    }

    static Reason knee(Order order) {
        KneeEase.Zone zone = KneeEase.zone(order);
        return new Reason(
                "front leg: knee ease",
                2 * zone.change(),
                "front longer and back shorter by the lesser of 4 % and the along reduction, each of the zone over the knee"
                        + " (200 mm, at most 0.45 of the knee's height)",
                List.of(
                        new Reason.Input("zone", 2 * zone.half(), "mm", "rule"),
                        new Reason.Input(
                                ReductionReasons.ALONG, 100 * order.reductions().along(), "%", ReductionReasons.ALONG)),
                DOC + "; trade-values 2.1 and 3");
    }

    static List<Reason> pocket(Parts.Pocket p) {
        String rule = p.kind() == Parts.Pocket.Kind.PHONE ? "as asked" : "pad + 5 mm";
        return List.of(
                new Reason(p.kind().piece() + ": width", p.finishedWidth(), rule, style("width", p.width()), DOC),
                new Reason(p.kind().piece() + ": height", p.finishedHeight(), rule, style("height", p.height()), DOC));
    }

    private static List<Reason.Input> style(String name, double mm) {
        return List.of(new Reason.Input(name, mm, "mm", "style"));
    }
}
