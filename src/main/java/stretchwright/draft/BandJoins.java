package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Style;

/** The seams of the top: darts, band or casing, key pocket. */
final class BandJoins {
    private BandJoins() {}

    static List<Seam> of(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Seam> seams = new ArrayList<>();
        for (Piece leg : legs.stream().flatMap(l -> l.pieces().stream()).toList()) {
            if (leg.has(EdgeName.DART_BACK_LEG)) {
                seams.add(Joins.seam(
                        style,
                        Seam.Role.DART,
                        SeamName.of(SeamKind.BACK_DART, leg.name().leg()),
                        leg.cut(),
                        Joins.side(leg, EdgeName.DART_BACK_LEG),
                        Joins.side(leg, EdgeName.DART_FRONT_LEG)));
            }
        }
        List<Piece> bands =
                pieces.stream().filter(p -> p.name().kind().isBand()).toList();
        Seam.Side top = new Seam.Side(
                legs.get(0).with(EdgeName.WAIST_EDGE).name(),
                EdgeName.WAIST_EDGE,
                LegSet.around(legs, EdgeName.WAIST_EDGE));
        if (bands.isEmpty()) {
            double turn = legs.get(0).allowance(EdgeName.WAIST_EDGE);
            seams.add(new Seam(Seam.Role.CASING, SeamName.of(SeamKind.CASING), List.of(top), 0, turn, 1));
        }
        for (Piece band : bands) {
            Seam.Side end = Joins.side(band, EdgeName.CENTRE_BACK_END);
            SeamKind ends =
                    band.name().is(PieceKind.WAISTBAND) ? SeamKind.WAISTBAND_ENDS : SeamKind.WAISTBAND_FACING_ENDS;
            seams.add(Joins.seam(style, Seam.Role.WAISTBAND_ENDS, SeamName.of(ends), 1, end, end));
        }
        if (bands.size() == 2) {
            seams.add(Joins.seam(
                    style,
                    Seam.Role.WAISTBAND_TOP,
                    SeamName.of(SeamKind.WAISTBAND_TOP),
                    1,
                    round(bands.get(0), EdgeName.UPPER_EDGE),
                    round(bands.get(1), EdgeName.UPPER_EDGE)));
        }
        if (!bands.isEmpty()) {
            seams.add(Joins.seam(
                    style,
                    Seam.Role.WAISTBAND_JOIN,
                    SeamName.of(SeamKind.WAISTBAND_JOIN),
                    1,
                    top,
                    round(bands.get(0), EdgeName.LOWER_EDGE)));
        }
        pieces.stream().filter(p -> p.name().is(PieceKind.KEY_POCKET)).forEach(p -> keyPocket(p, seams));
        return seams;
    }

    private static void keyPocket(Piece pocket, List<Seam> seams) {
        seams.add(alone(Seam.Role.KEY_POCKET_HEM, SeamKind.KEY_POCKET_HEM, pocket, EdgeName.UPPER_EDGE));
        seams.add(alone(Seam.Role.KEY_POCKET, SeamKind.KEY_POCKET_LEFT_SIDE, pocket, EdgeName.LEFT_SIDE));
        seams.add(alone(Seam.Role.KEY_POCKET, SeamKind.KEY_POCKET_RIGHT_SIDE, pocket, EdgeName.RIGHT_SIDE));
    }

    private static Seam alone(Seam.Role role, SeamKind kind, Piece piece, EdgeName edge) {
        Edge on = piece.edge(edge);
        return new Seam(role, SeamName.of(kind), List.of(Joins.side(piece, edge)), 0, on.allowance(), 1);
    }

    /** Both halves of a half piece. */
    private static Seam.Side round(Piece band, EdgeName edge) {
        return new Seam.Side(band.name(), edge, 2 * band.edge(edge).length());
    }
}
