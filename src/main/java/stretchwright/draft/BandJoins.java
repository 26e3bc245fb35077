package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** The seams of the top: darts, band or casing, key pocket. */
final class BandJoins {
    private BandJoins() {}

    static List<Seam> of(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Seam> seams = new ArrayList<>();
        for (Piece leg : legs.stream().flatMap(l -> l.pieces().stream()).toList()) {
            if (leg.edges().stream().anyMatch(e -> e.name().equals(Darts.BACK_LEG))) {
                String which = leg.name().replace("leg", "");
                seams.add(Joins.seam(
                        style,
                        Seam.Role.DART,
                        which + "back dart",
                        leg.cut(),
                        Joins.side(leg, Darts.BACK_LEG),
                        Joins.side(leg, Darts.FRONT_LEG)));
            }
        }
        List<Piece> bands =
                pieces.stream().filter(p -> p.name().startsWith("waistband")).toList();
        Seam.Side top =
                new Seam.Side(legs.get(0).with("waist edge").name(), "waist edge", LegSet.around(legs, "waist edge"));
        if (bands.isEmpty()) {
            double turn = legs.get(0).allowance("waist edge");
            seams.add(new Seam(Seam.Role.CASING, "casing", List.of(top), 0, turn, 1));
        }
        for (Piece band : bands) {
            Seam.Side end = Joins.side(band, "centre back end");
            seams.add(Joins.seam(style, Seam.Role.WAISTBAND_ENDS, band.name() + " ends", 1, end, end));
        }
        if (bands.size() == 2) {
            seams.add(Joins.seam(
                    style,
                    Seam.Role.WAISTBAND_TOP,
                    "waistband top",
                    1,
                    round(bands.get(0), "upper edge"),
                    round(bands.get(1), "upper edge")));
        }
        if (!bands.isEmpty()) {
            seams.add(Joins.seam(
                    style, Seam.Role.WAISTBAND_JOIN, "waistband join", 1, top, round(bands.get(0), "lower edge")));
        }
        pieces.stream().filter(p -> p.name().equals("key pocket")).forEach(p -> keyPocket(p, seams));
        return seams;
    }

    private static void keyPocket(Piece pocket, List<Seam> seams) {
        seams.add(alone(Seam.Role.KEY_POCKET_HEM, "key pocket hem", pocket, "upper edge"));
        seams.add(alone(Seam.Role.KEY_POCKET, "key pocket left side", pocket, "left side"));
        seams.add(alone(Seam.Role.KEY_POCKET, "key pocket right side", pocket, "right side"));
    }

    private static Seam alone(Seam.Role role, String name, Piece piece, String edge) {
        Edge on = piece.edge(edge);
        return new Seam(role, name, List.of(Joins.side(piece, edge)), 0, on.allowance(), 1);
    }

    /** Both halves of a half piece. */
    private static Seam.Side round(Piece band, String edge) {
        return new Seam.Side(band.name(), edge, 2 * band.edge(edge).length());
    }
}
