package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Which edges are sewn to which. */
final class Joins {
    private Joins() {}

    static List<Seam> of(List<Piece> pieces, List<Piece> legs, Style style) {
        Piece left = legs.get(0);
        Piece right = legs.get(legs.size() - 1);
        List<Piece> cuffs =
                pieces.stream().filter(p -> p.name().endsWith("cuff")).toList();
        List<Seam> seams = new ArrayList<>();
        for (Seam.Role rise : List.of(Seam.Role.FRONT_RISE, Seam.Role.BACK_RISE)) {
            String edge = rise == Seam.Role.FRONT_RISE ? "front crotch" : "back crotch";
            String name = rise == Seam.Role.FRONT_RISE ? "front rise" : "back rise";
            seams.add(seam(style, rise, name, 1, side(left, edge), side(right, edge)));
        }
        each(
                legs,
                "leg",
                (leg, which, times) -> seams.add(seam(
                        style,
                        Seam.Role.INSEAM,
                        which + "inseam",
                        times,
                        side(leg, "front inseam"),
                        side(leg, "back inseam"))));
        seams.addAll(BandJoins.of(pieces, legs, style));
        if (Cover.wanted(style)) {
            seams.addAll(LowerJoins.covers(pieces, legs, style));
            return seams;
        }
        seams.addAll(LowerJoins.straps(pieces, legs, style));
        if (cuffs.isEmpty()) {
            each(
                    legs,
                    "leg",
                    (leg, which, times) -> seams.add(new Seam(
                            Seam.Role.HEM,
                            which + "hem",
                            List.of(side(leg, "hem")),
                            0,
                            leg.edge("hem").allowance(),
                            times)));
            return seams;
        }
        each(
                cuffs,
                "cuff",
                (cuff, which, times) -> seams.add(seam(
                        style,
                        Seam.Role.CUFF_ENDS,
                        which + "cuff ends",
                        times,
                        side(cuff, "left end"),
                        side(cuff, "right end"))));
        each(legs, "leg", (leg, which, times) -> {
            Piece cuff = which.startsWith("right") ? cuffs.get(cuffs.size() - 1) : cuffs.get(0);
            seams.add(seam(
                    style,
                    Seam.Role.CUFF_JOIN,
                    which + "cuff join",
                    times,
                    side(leg, "hem"),
                    side(cuff, "lower edge")));
        });
        return seams;
    }

    interface ForEach {
        void add(Piece piece, String which, int times);
    }

    /** One piece that is cut twice gives a seam that is sewn twice; a left and a right one give a seam each. */
    static void each(List<Piece> pieces, String noun, ForEach action) {
        for (Piece piece : pieces) {
            action.add(piece, piece.name().replace(noun, ""), piece.cut());
        }
    }

    static Seam seam(Style style, Seam.Role role, String name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), style.allowance(role), times);
    }

    static Seam.Side side(Piece piece, String edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }

    /** Length of an edge of the legs all the way round the body; where a dart parts it, of both its parts. */
    static double around(List<Piece> legs, String edge) {
        return legs.stream()
                .mapToDouble(p -> p.cut()
                        * p.edges().stream()
                                .filter(e -> e.name().endsWith(edge))
                                .mapToDouble(Edge::length)
                                .sum())
                .sum();
    }
}
