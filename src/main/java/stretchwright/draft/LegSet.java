package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;

/**
 * The pieces of one leg: a single one, or front, panel and back, from the front on.
 *
 * @param which "" where both legs are alike, else "left " or "right "
 * @param cut how often the leg is cut: twice where both are alike
 */
record LegSet(String which, int cut, List<Piece> pieces) {
    LegSet {
        pieces = List.copyOf(pieces);
    }

    static LegSet of(Piece leg) {
        return new LegSet(leg.name().replace("leg", ""), leg.cut(), List.of(leg));
    }

    /** The first of the pieces that has this edge. */
    Piece with(String edge) {
        return pieces.stream()
                .filter(p -> p.edges().stream().anyMatch(e -> e.name().equals(edge)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the " + which + "leg has no " + edge));
    }

    /** Length of an edge over all pieces that have a part of it; where a dart parts it, of both its parts. */
    double length(String edge) {
        return pieces.stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name().equals(edge) || e.name().equals("back " + edge))
                .mapToDouble(e -> e.length())
                .sum();
    }

    double allowance(String edge) {
        return with(edge).edge(edge).allowance();
    }

    Seam.Side side(String edge) {
        return new Seam.Side(with(edge).name(), edge, length(edge));
    }

    /** A dimension of the whole leg. */
    Dimension its(What what) {
        return new Dimension(which + "leg", what);
    }

    /** Where the leg is cut into parts: each part's share of the edges that were whole before. */
    List<Reason> shares() {
        List<Reason> out = new ArrayList<>();
        if (pieces.size() > 1) {
            for (Piece part : pieces) {
                out.add(share(part, "waist edge", What.WAIST_EDGE_LENGTH, Tell.said("rule.part-of-waist-edge")));
                out.add(share(part, "hem", What.HEM_LENGTH, Tell.said("rule.part-of-hem")));
            }
        }
        return out;
    }

    private Reason share(Piece part, String edge, What what, Said rule) {
        Input whole = new Input(Tell.said("input.all-parts"), length(edge), "mm", its(what));
        return Ruled.of(new LegSet(which, cut, List.of(part)).length(edge), rule, Tell.said("source.parts"), whole)
                .reason(new Dimension(part.name(), what));
    }

    /** Length of an edge of both legs all the way round the body. */
    static double around(List<LegSet> legs, String edge) {
        return legs.stream().mapToDouble(l -> l.cut() * l.length(edge)).sum();
    }
}
