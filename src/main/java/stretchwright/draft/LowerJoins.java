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

/** Which edges of boot covers and straps are sewn to which. */
final class LowerJoins {
    private LowerJoins() {}

    static List<Seam> covers(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Piece> covers =
                pieces.stream().filter(p -> p.name().is(PieceKind.BOOT_COVER)).toList();
        List<Seam> seams = new ArrayList<>();
        for (Piece cover : covers) {
            WhichLeg which = cover.name().leg();
            int pairs = cover.cut() / 2;
            seams.add(half(style, cover, EdgeName.FRONT_EDGE, SeamName.of(SeamKind.COVER_FRONT, which), pairs));
            seams.add(half(style, cover, EdgeName.BACK_EDGE, SeamName.of(SeamKind.COVER_BACK, which), pairs));
            LegSet leg = which == WhichLeg.RIGHT ? legs.get(legs.size() - 1) : legs.get(0);
            seams.add(Joins.seam(
                    style,
                    Seam.Role.COVER_JOIN,
                    SeamName.of(SeamKind.COVER_JOIN, which),
                    pairs,
                    leg.side(EdgeName.HEM),
                    ring(cover, EdgeName.UPPER_EDGE)));
            seams.add(new Seam(
                    Seam.Role.HEM,
                    SeamName.of(SeamKind.HEM, which),
                    List.of(ring(cover, EdgeName.LOWER_EDGE)),
                    0,
                    cover.edge(EdgeName.LOWER_EDGE).allowance(),
                    pairs));
        }
        return seams;
    }

    /** Where two halves of a cover meet in front or behind. */
    private static Seam half(Style style, Piece cover, EdgeName edge, SeamName name, int pairs) {
        Seam.Side half = Joins.side(cover, edge);
        return Joins.seam(style, Seam.Role.COVER_SEAM, name, pairs, half, half);
    }

    /** Both halves of a cover together. */
    private static Seam.Side ring(Piece cover, EdgeName edge) {
        return new Seam.Side(cover.name(), edge, 2 * cover.edge(edge).length());
    }

    /** A strap of cloth: closed into a tube, each end caught flat in the hem. */
    static List<Seam> straps(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Seam> seams = new ArrayList<>();
        pieces.stream().filter(p -> p.name().is(PieceKind.STRAP)).forEach(strap -> {
            seams.add(Joins.seam(
                    style,
                    Seam.Role.STRAP_EDGES,
                    SeamName.of(SeamKind.STRAP_EDGES),
                    2,
                    Joins.side(strap, EdgeName.LOWER_EDGE),
                    Joins.side(strap, EdgeName.UPPER_EDGE)));
            double width = strap.edge(EdgeName.RIGHT_END).length() / 2;
            for (LegSet leg : legs) {
                seams.add(new Seam(
                        Seam.Role.STRAP_ENDS,
                        SeamName.of(SeamKind.STRAP_ENDS, leg.which()),
                        List.of(
                                new Seam.Side(leg.with(EdgeName.HEM).name(), EdgeName.HEM, width),
                                new Seam.Side(strap.name(), EdgeName.RIGHT_END, width)),
                        0,
                        strap.edge(EdgeName.RIGHT_END).allowance(),
                        2 * leg.cut()));
            }
        });
        return seams;
    }
}
