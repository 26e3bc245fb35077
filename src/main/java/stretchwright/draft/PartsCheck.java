package stretchwright.draft;

import java.util.Locale;
import java.util.stream.IntStream;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.TopEnd;

/** Whether what is asked of a leg's parts goes together with the leg; names the two things at odds where it does not. */
final class PartsCheck {
    /** Of the leg's width on the crotch line; wider would leave the leg's own cloth only a strip (design value). */
    static final double WIDEST_GUSSET = 0.4;

    /** The gusset's tips stay this far below the waist edge, mm. */
    private static final double ABOVE_GUSSET = 100;

    /** The least width of front and back beside a panel, mm. */
    private static final double BESIDE_PANEL = 25;

    /** From a seam to a dart, mm: room for the allowances of both (design value). */
    private static final double BESIDE_DART = 15;

    /** Points of a dart's leg that are looked at. */
    private static final int DART_POINTS = 10;

    /** A narrower panel cannot be sewn, mm (common practice). */
    private static final double LEAST_PANEL = 10;

    private PartsCheck() {}

    static boolean pass(Leg leg, Piece piece, Parts parts, Findings findings) {
        int before = findings.all().size();
        dart(leg, piece, findings);
        parts.gusset().ifPresent(g -> gusset(piece, g, findings));
        parts.panelWidth().ifPresent(w -> panel(piece, w, findings));
        if (parts.kneeShaping()) {
            knee(leg, parts, findings);
        }
        return findings.all().size() == before;
    }

    /** On a steep waist edge a dart leans back; it must end before the centre back seam. */
    private static void dart(Leg leg, Piece piece, Findings findings) {
        Path rise = piece.edge("back crotch").line();
        boolean apart = piece.edges().stream()
                .filter(e -> e.name().equals(Darts.BACK_LEG))
                .map(Edge::line)
                .allMatch(l -> IntStream.rangeClosed(0, DART_POINTS)
                        .mapToObj(i -> l.at(l.length() * i / DART_POINTS))
                        .noneMatch(p -> beside(p, rise) < BESIDE_DART));
        if (!apart) {
            TopEnd top = leg.order().style().top();
            Draft.atOdds(
                    findings,
                    "style.back",
                    "Choose style.back: shaped seam or plain, or bring front and back waist nearer together.",
                    "darts are at odds with so steep a waist edge (front waist %+.0f mm, back waist %+.0f mm%s): they would run"
                            + " into the centre back seam.",
                    top.frontRaise(),
                    top.backRaise(),
                    leg.order().body().seated() ? ", a wearer who sits" : "");
        }
    }

    /** How far a point lies before an upright edge, level with it, mm; infinite above and below it. */
    private static double beside(Point p, Path upright) {
        double along = upright.alongAtHeight(p.y());
        return along < 0 ? Double.POSITIVE_INFINITY : upright.at(along).x() - p.x();
    }

    private static void gusset(Piece piece, Parts.Gusset g, Findings findings) {
        double thigh = piece.edge("back inseam").line().end().x()
                - piece.edge("front inseam").line().start().x();
        if (g.width() > WIDEST_GUSSET * thigh) {
            Draft.atOdds(
                    findings,
                    "style.gusset.width",
                    String.format(Locale.ROOT, "Choose a gusset of %.0f mm or less.", WIDEST_GUSSET * thigh),
                    "%.0f mm is at odds with the leg, cut %.0f mm wide at the crotch: the gusset is too wide for the thigh.",
                    g.width(),
                    thigh);
        }
        if (g.width() > g.length()) {
            Draft.atOdds(
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
            Draft.atOdds(
                    findings,
                    "style.gusset.length",
                    String.format(Locale.ROOT, "Choose a gusset of %.0f mm or less.", Math.max(0, 1.8 * most)),
                    "%.0f mm is at odds with the front crotch curve of %.0f mm: half the gusset must end %.0f mm below the"
                            + " waist edge.",
                    g.length(),
                    curve,
                    ABOVE_GUSSET);
        }
    }

    private static void panel(Piece piece, double width, Findings findings) {
        double below = Math.min(room(piece, "front inseam"), room(piece, "back inseam"));
        double above = Math.min(room(piece, "front crotch"), room(piece, "back crotch"));
        double room = Math.min(below, above);
        double dart = Math.min(room(piece, Darts.BACK_LEG), room(piece, Darts.FRONT_LEG));
        double beside = 2 * (room - BESIDE_PANEL);
        double most = Math.min(beside, 2 * (dart - BESIDE_DART));
        String narrower = Math.floor(most) < LEAST_PANEL
                ? "Leave the panel out"
                : String.format(Locale.ROOT, "Choose a panel of %.0f mm or less, or none", Math.floor(most));
        if (width > beside) {
            Draft.atOdds(
                    findings,
                    "style.panel.width",
                    narrower + ".",
                    "%.0f mm is at odds with the leg: at its narrowest only %.0f mm lie between the side line and the %s.",
                    width,
                    room,
                    below <= above ? "inseam" : "centre seam");
        } else if (width > most) {
            Draft.atOdds(
                    findings,
                    "style.panel.width",
                    narrower + "; or style.back: plain.",
                    "%.0f mm is at odds with style.back: darts: the dart begins %.0f mm from the side line, and the panel's"
                            + " seam needs %.0f mm beside it.",
                    width,
                    dart,
                    BESIDE_DART);
        }
    }

    /** @param taken what each seam takes in at the waist, mm */
    static boolean panelKeepsItsWidth(Parts parts, double taken, Findings findings) {
        double least = 2 * taken + LEAST_PANEL;
        double width = parts.panelWidth().orElse(least);
        if (width < least) {
            Draft.atOdds(
                    findings,
                    "style.panel.width",
                    String.format(
                            Locale.ROOT,
                            "Choose a panel of %.0f mm or more, or style.side seam: none.",
                            Math.ceil(least)),
                    "%.0f mm is at odds with style.side seam: shaped: both seams of the panel lean in by %.0f mm at the waist,"
                            + " and %.0f mm must stay between them.",
                    width,
                    taken,
                    LEAST_PANEL);
        }
        return width >= least;
    }

    /** From the side line to where an edge comes nearest to it, mm; infinite where the leg has no such edge. */
    private static double room(Piece piece, String edge) {
        return piece.edges().stream()
                .filter(e -> e.name().equals(edge))
                .flatMap(e -> e.line().points().stream())
                .mapToDouble(p -> Math.abs(p.x()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
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
            Draft.atOdds(
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
            Draft.atOdds(
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
