package stretchwright.draft;

import java.util.List;
import stretchwright.pattern.Piece;
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

    /** Length of an edge of both legs all the way round the body. */
    static double around(List<LegSet> legs, String edge) {
        return legs.stream().mapToDouble(l -> l.cut() * l.length(edge)).sum();
    }
}
