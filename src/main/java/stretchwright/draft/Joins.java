package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Which edges are sewn to which. */
final class Joins {
    private Joins() {}

    static List<Seam> of(List<LegSet> legs, Piece band, List<Piece> cuffs, Style style) {
        LegSet left = legs.get(0);
        LegSet right = legs.get(legs.size() - 1);
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
        Seam.Side end = side(band, "centre back end");
        seams.add(seam(style, Seam.Role.WAISTBAND_ENDS, "waistband ends", 1, end, end));
        Seam.Side top = new Seam.Side(left.with("waist edge").name(), "waist edge", LegSet.around(legs, "waist edge"));
        Seam.Side lower = new Seam.Side(
                band.name(), "lower edge", 2 * band.edge("lower edge").length());
        seams.add(seam(style, Seam.Role.WAISTBAND_JOIN, "waistband join", 1, top, lower));
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

    private interface ForEach {
        void add(Piece piece, String which, int times);
    }

    /** One piece that is cut twice gives a seam that is sewn twice; a left and a right one give a seam each. */
    private static void each(List<Piece> pieces, String noun, ForEach action) {
        for (Piece piece : pieces) {
            action.add(piece, piece.name().replace(noun, ""), piece.cut());
        }
    }

    private static Seam seam(Style style, Seam.Role role, String name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), style.allowance(role), times);
    }

    private static Seam.Side side(Piece piece, String edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }
}
