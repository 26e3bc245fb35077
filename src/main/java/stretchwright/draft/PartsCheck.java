package stretchwright.draft;

import stretchwright.ground.Findings;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;

/** Whether what is asked of a leg's parts goes together with the leg; names the two things at odds where it does not. */
final class PartsCheck {
    /** Of the leg's width on the crotch line; wider would leave the leg's own cloth only a strip (design value). */
    static final double WIDEST_GUSSET = 0.4;

    /** The gusset's tips stay this far below the waist edge, mm. */
    private static final double ABOVE_GUSSET = 100;

    /** The least width of front and back beside a panel, mm. */
    private static final double BESIDE_PANEL = 25;

    private PartsCheck() {}

    static boolean pass(Leg leg, Piece piece, Parts parts, Findings findings) {
        int before = findings.all().size();
        parts.gusset().ifPresent(g -> gusset(piece, g, findings));
        parts.panelWidth().ifPresent(w -> panel(piece, w, findings));
        if (parts.kneeShaping()) {
            knee(leg, parts, findings);
        }
        return findings.all().size() == before;
    }

    private static void gusset(Piece piece, Parts.Gusset g, Findings findings) {
        double thigh = piece.edge("back inseam").line().end().x()
                - piece.edge("front inseam").line().start().x();
        if (g.width() > WIDEST_GUSSET * thigh) {
            Odds.at(
                    findings,
                    "style.gusset.width",
                    String.format(java.util.Locale.ROOT, "Choose a gusset of %.0f mm or less.", WIDEST_GUSSET * thigh),
                    "%.0f mm is at odds with the leg, cut %.0f mm wide at the crotch: the gusset is too wide for the thigh.",
                    g.width(),
                    thigh);
        }
        if (g.width() > g.length()) {
            Odds.at(
                    findings,
                    "style.gusset.width",
                    "The length runs from front to back and is the larger one; exchange the two.",
                    "%.0f mm is more than the gusset's length of %.0f mm.",
                    g.width(),
                    g.length());
        }
        double curve = Math.min(
                piece.edge("front crotch").length(), piece.edge("back crotch").length());
        double most = curve - ABOVE_GUSSET;
        if (GussetCut.reach(g) > most) {
            Odds.at(
                    findings,
                    "style.gusset.length",
                    String.format(
                            java.util.Locale.ROOT, "Choose a gusset of %.0f mm or less.", Math.max(0, 1.8 * most)),
                    "%.0f mm is at odds with the front crotch curve of %.0f mm: half the gusset must end %.0f mm below the"
                            + " waist edge.",
                    g.length(),
                    curve,
                    ABOVE_GUSSET);
        }
    }

    private static void panel(Piece piece, double width, Findings findings) {
        double room = Math.min(
                piece.edge("front inseam").line().points().stream()
                        .mapToDouble(p -> -p.x())
                        .min()
                        .orElseThrow(),
                piece.edge("back inseam").line().points().stream()
                        .mapToDouble(p -> p.x())
                        .min()
                        .orElseThrow());
        double most = 2 * (room - BESIDE_PANEL);
        if (width > most) {
            Odds.at(
                    findings,
                    "style.panel.width",
                    String.format(
                            java.util.Locale.ROOT, "Choose a panel of %.0f mm or less, or none.", Math.max(0, most)),
                    "%.0f mm is at odds with the leg: at its narrowest only %.0f mm lie between the side line and the"
                            + " inseam.",
                    width,
                    room);
        }
    }

    private static void knee(Leg leg, Parts parts, Findings findings) {
        KneeEase.Zone zone = KneeEase.zone(leg.order());
        if (!parts.cutAtSide()) {
            findings.add(
                    "style.knee shaping",
                    "is at odds with a leg in one piece: there is no seam at the side into which the front could be eased.",
                    "Choose side seam: shaped or a panel, or leave the knee shaping out.");
            return;
        }
        if (zone.change() < KneeEase.LEAST) {
            Odds.at(
                    findings,
                    "style.knee shaping",
                    "Choose a cloth that stretches more along the leg, or leave the knee shaping out.",
                    "is at odds with this cloth: taken off along the leg is %.1f %%, which leaves %.1f mm to move; more would"
                            + " hang slack when standing.",
                    100 * leg.order().reductions().along(),
                    zone.change());
        }
        double end = leg.curves().endHeight();
        if (zone.low() < end + 25) {
            Odds.at(
                    findings,
                    "style.knee shaping",
                    "Choose a longer leg, or leave the knee shaping out.",
                    "is at odds with the length of the leg: it ends %.0f mm %s the middle of the knee, and the room needs"
                            + " %.0f mm below it.",
                    Math.abs(zone.middle() - end),
                    end > zone.middle() ? "above" : "below",
                    zone.half() + 25);
        }
    }
}
