package stretchwright.draft;

import java.util.List;
import stretchwright.ground.Path;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;

/**
 * How much a shaped side seam takes in at the waist.
 *
 * <p>Of the surplus of the legs' top edges over the waistband, all but {@link #HELD} of the band, so that the band still
 * holds; shared evenly by all cut edges. No edge leaves the side line by more than 0.05 of half the hip, nor by more than
 * 0.15 of its height above the hip: the parabola then leans in by 17 degrees at most (design values, no source).
 */
final class SideTake {
    /** The band stays shorter than the edge by this share. */
    static final double HELD = 0.03;

    static final double OF_HIP = 0.05;
    static final double OF_RISE = 0.15;

    private SideTake() {}

    private record Limits(double surplus, int edges, double byHip, double byRise) {
        double perEdge() {
            return Math.max(0, Math.min(surplus / edges, Math.min(byHip, byRise)));
        }
    }

    private static Limits limits(Order order, List<Leg> legs, List<Piece> drawn, double band) {
        double top = drawn.stream()
                .mapToDouble(p -> p.cut() * p.edge("waist edge").length())
                .sum();
        int cuts = Math.max(1, SideCut.lines(order.style().parts()).size());
        double rise = Double.POSITIVE_INFINITY;
        for (int i = 0; i < legs.size(); i++) {
            Path waist = drawn.get(i).edge("waist edge").line();
            double side = waist.at(Outline.alongAtX(waist, 0).orElseThrow()).y();
            rise = Math.min(rise, side - legs.get(i).top().hipHeight());
        }
        double hip = Frame.of(order).hip();
        return new Limits(top - band * (1 + HELD), 4 * cuts, OF_HIP * hip / cuts, OF_RISE * rise);
    }

    /** What each cut edge takes in at the waist, mm. */
    static double perEdge(Order order, List<Leg> legs, List<Piece> drawn, double band) {
        if (order.style().parts().sideSeam() != Parts.SideSeam.SHAPED) {
            return 0;
        }
        return limits(order, legs, drawn, band).perEdge();
    }

    static Reason reason(Order order, List<Leg> legs, List<Piece> drawn, double band) {
        Limits l = limits(order, legs, drawn, band);
        String leg = drawn.get(0).name() + ": ";
        return new Reason(
                "front leg: side take-in",
                l.perEdge(),
                "the least of surplus / cut edges, 0.05 of half the hip / cuts of a leg, 0.15 of the side's height above the"
                        + " hip; not below 0",
                List.of(
                        new Reason.Input(
                                "surplus of top edge over 1.03 x band", l.surplus(), "mm", leg + "waist edge length"),
                        new Reason.Input("cut edges of the pair", l.edges(), "", "style"),
                        new Reason.Input("limit by the hip", l.byHip(), "mm", leg + "hip width, both legs"),
                        new Reason.Input("limit by the rise", l.byRise(), "mm", "rule")),
                "docs/maths/draft.md, Parts; design values, no source");
    }
}
