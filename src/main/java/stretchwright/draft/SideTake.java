package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Reason.Origin;

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
                .mapToDouble(p -> p.cut() * p.edge(EdgeName.WAIST_EDGE).length())
                .sum();
        int cuts = Math.max(1, SideCut.lines(order.style().parts()).size());
        double rise = Double.POSITIVE_INFINITY;
        for (int i = 0; i < legs.size(); i++) {
            Path waist = drawn.get(i).edge(EdgeName.WAIST_EDGE).line();
            double side = waist.at(Outline.alongAtX(waist, 0).orElseThrow()).y();
            rise = Math.min(rise, side - legs.get(i).top().hipHeight());
        }
        double hip = Frame.of(order).hip();
        return new Limits(top - band * (1 + HELD), 4 * cuts, OF_HIP * hip / cuts, OF_RISE * rise);
    }

    /** What each cut edge takes in at the waist, mm; empty where the side is not shaped. */
    static Optional<Ruled> perEdge(Order order, List<Leg> legs, List<Piece> drawn, double band) {
        if (order.style().parts().sideSeam() != Parts.SideSeam.SHAPED) {
            return Optional.empty();
        }
        Limits l = limits(order, legs, drawn, band);
        PieceName leg = drawn.get(0).name();
        return Optional.of(Ruled.of(
                l.perEdge(),
                Tell.said("rule.side-take-in", Part.number(OF_HIP, 2), Part.number(OF_RISE, 2)),
                Tell.said("source.parts-design"),
                new Input(
                        Tell.said("input.surplus-over-band", Part.number(1 + HELD, 2)),
                        l.surplus(),
                        "mm",
                        Dimension.of(leg, What.WAIST_EDGE_LENGTH)),
                new Input(Tell.said("input.cut-edges"), l.edges(), "", Origin.STYLE),
                new Input(Tell.said("input.limit-by-hip"), l.byHip(), "mm", Dimension.of(leg, What.HIP_WIDTH)),
                Inputs.rule(Tell.said("input.limit-by-rise"), l.byRise())));
    }
}
