package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Which edges are sewn to which. */
final class Joins {
    private Joins() {}

    static List<Seam> of(List<Piece> pieces, List<LegSet> legs, Style style) {
        LegSet left = legs.get(0);
        LegSet right = legs.get(legs.size() - 1);
        List<Piece> cuffs =
                pieces.stream().filter(p -> p.name().endsWith("cuff")).toList();
        List<Seam> seams = new ArrayList<>();
        for (Seam.Role rise : List.of(Seam.Role.FRONT_RISE, Seam.Role.BACK_RISE)) {
            String edge = rise == Seam.Role.FRONT_RISE ? "front crotch" : "back crotch";
            String name = rise == Seam.Role.FRONT_RISE ? "front rise" : "back rise";
            seams.add(seam(style, rise, name, 1, left.side(edge), right.side(edge)));
        }
        for (LegSet leg : legs) {
            seams.add(seam(
                    style,
                    Seam.Role.INSEAM,
                    leg.which() + "inseam",
                    leg.cut(),
                    leg.side("front inseam"),
                    leg.side("back inseam")));
        }
        seams.addAll(BandJoins.of(pieces, legs, style));
        if (Cover.wanted(style)) {
            seams.addAll(LowerJoins.covers(pieces, legs, style));
            return seams;
        }
        seams.addAll(LowerJoins.straps(pieces, legs, style));
        if (cuffs.isEmpty()) {
            for (LegSet leg : legs) {
                seams.add(new Seam(
                        Seam.Role.HEM,
                        leg.which() + "hem",
                        List.of(leg.side("hem")),
                        0,
                        leg.allowance("hem"),
                        leg.cut()));
            }
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
        for (LegSet leg : legs) {
            Piece cuff = leg.which().startsWith("right") ? cuffs.get(cuffs.size() - 1) : cuffs.get(0);
            seams.add(seam(
                    style,
                    Seam.Role.CUFF_JOIN,
                    leg.which() + "cuff join",
                    leg.cut(),
                    leg.side("hem"),
                    side(cuff, "lower edge")));
        }
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
}
