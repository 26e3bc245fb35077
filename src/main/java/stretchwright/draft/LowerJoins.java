package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Which edges of boot covers and straps are sewn to which. */
final class LowerJoins {
    private LowerJoins() {}

    static List<Seam> covers(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Piece> covers =
                pieces.stream().filter(p -> p.name().endsWith("boot cover")).toList();
        List<Seam> seams = new ArrayList<>();
        for (Piece cover : covers) {
            String which = cover.name().replace("boot cover", "");
            int pairs = cover.cut() / 2;
            for (String edge : List.of("front edge", "back edge")) {
                String name = which + "cover " + edge.replace(" edge", "");
                Seam.Side half = Joins.side(cover, edge);
                seams.add(Joins.seam(style, Seam.Role.COVER_SEAM, name, pairs, half, half));
            }
            LegSet leg = which.startsWith("right") ? legs.get(legs.size() - 1) : legs.get(0);
            seams.add(Joins.seam(
                    style,
                    Seam.Role.COVER_JOIN,
                    which + "cover join",
                    pairs,
                    leg.side("hem"),
                    ring(cover, "upper edge")));
            seams.add(new Seam(
                    Seam.Role.HEM,
                    which + "hem",
                    List.of(ring(cover, "lower edge")),
                    0,
                    cover.edge("lower edge").allowance(),
                    pairs));
        }
        return seams;
    }

    /** Both halves of a cover together. */
    private static Seam.Side ring(Piece cover, String edge) {
        return new Seam.Side(cover.name(), edge, 2 * cover.edge(edge).length());
    }

    /** A strap of cloth: closed into a tube, each end caught flat in the hem. */
    static List<Seam> straps(List<Piece> pieces, List<LegSet> legs, Style style) {
        List<Seam> seams = new ArrayList<>();
        pieces.stream().filter(p -> p.name().equals("strap")).forEach(strap -> {
            seams.add(Joins.seam(
                    style,
                    Seam.Role.STRAP_EDGES,
                    "strap edges",
                    2,
                    Joins.side(strap, "lower edge"),
                    Joins.side(strap, "upper edge")));
            double width = strap.edge("right end").length() / 2;
            for (LegSet leg : legs) {
                seams.add(new Seam(
                        Seam.Role.STRAP_ENDS,
                        leg.which() + "strap ends",
                        List.of(
                                new Seam.Side(leg.with("hem").name(), "hem", width),
                                new Seam.Side(strap.name(), "right end", width)),
                        0,
                        strap.edge("right end").allowance(),
                        2 * leg.cut()));
            }
        });
        return seams;
    }
}
