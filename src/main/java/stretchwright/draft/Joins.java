package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Which edges are sewn to which. */
final class Joins {
    private Joins() {}

    static List<Seam> of(List<Piece> pieces, Style style) {
        Piece leg = pieces.get(0);
        Piece band = pieces.get(1);
        List<Seam> seams = new ArrayList<>();
        seams.add(seam(
                style, Seam.Role.FRONT_RISE, "front rise", 1, side(leg, "front crotch"), side(leg, "front crotch")));
        seams.add(seam(style, Seam.Role.BACK_RISE, "back rise", 1, side(leg, "back crotch"), side(leg, "back crotch")));
        seams.add(seam(style, Seam.Role.INSEAM, "inseam", 2, side(leg, "front inseam"), side(leg, "back inseam")));
        seams.add(seam(
                style,
                Seam.Role.WAISTBAND_ENDS,
                "waistband ends",
                1,
                side(band, "centre back end"),
                side(band, "centre back end")));
        seams.add(seam(
                style,
                Seam.Role.WAISTBAND_JOIN,
                "waistband join",
                1,
                ring(leg, "waist edge"),
                ring(band, "lower edge")));
        if (pieces.size() > 2) {
            Piece cuff = pieces.get(2);
            seams.add(
                    seam(style, Seam.Role.CUFF_ENDS, "cuff ends", 2, side(cuff, "left end"), side(cuff, "right end")));
            seams.add(seam(style, Seam.Role.CUFF_JOIN, "cuff join", 2, side(leg, "hem"), side(cuff, "lower edge")));
        } else {
            seams.add(new Seam(
                    Seam.Role.HEM,
                    "hem",
                    List.of(side(leg, "hem")),
                    0,
                    leg.edge("hem").allowance(),
                    2));
        }
        return seams;
    }

    private static Seam seam(Style style, Seam.Role role, String name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), style.allowance(role), times);
    }

    private static Seam.Side side(Piece piece, String edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }

    /** Both halves: the two leg tops, or the half band and its mirror image. */
    private static Seam.Side ring(Piece piece, String edge) {
        return new Seam.Side(piece.name(), edge, 2 * piece.edge(edge).length());
    }
}
