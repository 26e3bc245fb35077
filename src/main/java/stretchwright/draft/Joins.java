package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** Which edges are sewn to which. */
final class Joins {
    private Joins() {}

    static List<Seam> of(List<Piece> pieces, List<LegSet> legs, Style style) {
        LegSet left = legs.get(0);
        LegSet right = legs.get(legs.size() - 1);
        List<Piece> cuffs =
                pieces.stream().filter(p -> p.name().is(PieceKind.CUFF)).toList();
        List<Seam> seams = new ArrayList<>();
        for (Seam.Role rise : List.of(Seam.Role.FRONT_RISE, Seam.Role.BACK_RISE)) {
            EdgeName edge = rise == Seam.Role.FRONT_RISE ? EdgeName.FRONT_CROTCH : EdgeName.BACK_CROTCH;
            SeamKind name = rise == Seam.Role.FRONT_RISE ? SeamKind.FRONT_RISE : SeamKind.BACK_RISE;
            seams.add(seam(style, rise, SeamName.of(name), 1, left.side(edge), right.side(edge)));
        }
        for (LegSet leg : legs) {
            seams.add(seam(
                    style,
                    Seam.Role.INSEAM,
                    SeamName.of(SeamKind.INSEAM, leg.which()),
                    leg.cut(),
                    leg.side(EdgeName.FRONT_INSEAM),
                    leg.side(EdgeName.BACK_INSEAM)));
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
                        SeamName.of(SeamKind.HEM, leg.which()),
                        List.of(leg.side(EdgeName.HEM)),
                        0,
                        leg.allowance(EdgeName.HEM),
                        leg.cut()));
            }
            return seams;
        }
        // one cuff that is cut twice gives a seam that is sewn twice; a left and a right one give a seam each
        for (Piece cuff : cuffs) {
            seams.add(seam(
                    style,
                    Seam.Role.CUFF_ENDS,
                    SeamName.of(SeamKind.CUFF_ENDS, cuff.name().leg()),
                    cuff.cut(),
                    side(cuff, EdgeName.LEFT_END),
                    side(cuff, EdgeName.RIGHT_END)));
        }
        for (LegSet leg : legs) {
            Piece cuff = leg.which() == WhichLeg.RIGHT ? cuffs.get(cuffs.size() - 1) : cuffs.get(0);
            seams.add(seam(
                    style,
                    Seam.Role.CUFF_JOIN,
                    SeamName.of(SeamKind.CUFF_JOIN, leg.which()),
                    leg.cut(),
                    leg.side(EdgeName.HEM),
                    side(cuff, EdgeName.LOWER_EDGE)));
        }
        return seams;
    }

    static Seam seam(Style style, Seam.Role role, SeamName name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), style.allowance(role), times);
    }

    static Seam.Side side(Piece piece, EdgeName edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }
}
