package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;
import stretchwright.pattern.WhichLeg;

/**
 * The pieces of one leg: a single one, or front, panel and back, from the front on.
 *
 * @param which of them
 * @param cut how often the leg is cut: twice where both are alike
 */
record LegSet(WhichLeg which, int cut, List<Piece> pieces) {
    LegSet {
        pieces = List.copyOf(pieces);
    }

    static LegSet of(Piece leg) {
        return new LegSet(leg.name().leg(), leg.cut(), List.of(leg));
    }

    /** The first of the pieces that has this edge. */
    Piece with(EdgeName edge) {
        return pieces.stream()
                .filter(p -> p.has(edge))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the " + which.of("leg") + " has no " + edge));
    }

    /** Length of an edge over all pieces that have a part of it; where a dart parts it, of both its parts. */
    double length(EdgeName edge) {
        return pieces.stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name() == edge || (edge == EdgeName.WAIST_EDGE && e.name() == EdgeName.BACK_WAIST_EDGE))
                .mapToDouble(e -> e.length())
                .sum();
    }

    double allowance(EdgeName edge) {
        return with(edge).edge(edge).allowance();
    }

    Seam.Side side(EdgeName edge) {
        return new Seam.Side(with(edge).name(), edge, length(edge));
    }

    /** A dimension of the whole leg. */
    Dimension its(What what) {
        return Dimension.of(PieceName.of(PieceKind.LEG, which), what);
    }

    /** Where the leg is cut into parts: each part's share of the edges that were whole before. */
    List<Reason> shares() {
        List<Reason> out = new ArrayList<>();
        if (pieces.size() > 1) {
            for (Piece part : pieces) {
                out.add(share(part, EdgeName.WAIST_EDGE, What.WAIST_EDGE_LENGTH, Tell.said("rule.part-of-waist-edge")));
                out.add(share(part, EdgeName.HEM, What.HEM_LENGTH, Tell.said("rule.part-of-hem")));
            }
        }
        return out;
    }

    private Reason share(Piece part, EdgeName edge, What what, Said rule) {
        Input whole = new Input(Tell.said("input.all-parts"), length(edge), "mm", its(what));
        return Ruled.of(new LegSet(which, cut, List.of(part)).length(edge), rule, Tell.said("source.parts"), whole)
                .reason(Dimension.of(part.name(), what));
    }

    /** Length of an edge of both legs all the way round the body. */
    static double around(List<LegSet> legs, EdgeName edge) {
        return legs.stream().mapToDouble(l -> l.cut() * l.length(edge)).sum();
    }
}
