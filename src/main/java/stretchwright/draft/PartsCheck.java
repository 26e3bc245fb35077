package stretchwright.draft;

import java.util.stream.IntStream;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
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
        Path rise = piece.edge(EdgeName.BACK_CROTCH).line();
        boolean apart = piece.edges().stream()
                .filter(e -> e.name() == EdgeName.DART_BACK_LEG)
                .map(Edge::line)
                .allMatch(l -> IntStream.rangeClosed(0, DART_POINTS)
                        .mapToObj(i -> l.at(l.length() * i / DART_POINTS))
                        .noneMatch(p -> beside(p, rise) < BESIDE_DART));
        if (!apart) {
            TopEnd top = leg.order().style().top();
            Part front = Part.signed(top.frontRaise());
            Part back = Part.signed(top.backRaise());
            findings.add(
                    "style.back",
                    leg.order().body().seated()
                            ? Tell.said("dart.steep-seated", front, back)
                            : Tell.said("dart.steep", front, back),
                    Tell.said("dart.steep-help"));
        }
    }

    /** How far a point lies before an upright edge, level with it, mm; infinite above and below it. */
    private static double beside(Point p, Path upright) {
        double along = upright.alongAtHeight(p.y());
        return along < 0 ? Double.POSITIVE_INFINITY : upright.at(along).x() - p.x();
    }

    private static void gusset(Piece piece, Parts.Gusset g, Findings findings) {
        double thigh = piece.edge(EdgeName.BACK_INSEAM).line().end().x()
                - piece.edge(EdgeName.FRONT_INSEAM).line().start().x();
        if (g.width() > WIDEST_GUSSET * thigh) {
            findings.add(
                    "style.gusset.width",
                    Tell.said("gusset.wide", Part.length(g.width()), Part.length(thigh)),
                    Tell.said(
                            "gusset.most-help",
                            Part.length(WIDEST_GUSSET * thigh).atMost()));
        }
        if (g.width() > g.length()) {
            findings.add(
                    "style.gusset.width",
                    Tell.said("gusset.exchanged", Part.length(g.width()), Part.length(g.length())),
                    Tell.said("gusset.exchanged-help"));
        }
        double curve = Math.min(
                piece.edge(EdgeName.FRONT_CROTCH).length(),
                piece.edge(EdgeName.BACK_CROTCH).length());
        double most = curve - ABOVE_GUSSET;
        if (GussetCut.reach(g) > most) {
            findings.add(
                    "style.gusset.length",
                    Tell.said("gusset.long", Part.length(g.length()), Part.length(curve), Part.length(ABOVE_GUSSET)),
                    Tell.said(
                            "gusset.most-help",
                            Part.length(Math.max(0, 1.8 * most)).atMost()));
        }
    }

    private static void panel(Piece piece, double width, Findings findings) {
        double below = Math.min(room(piece, EdgeName.FRONT_INSEAM), room(piece, EdgeName.BACK_INSEAM));
        double above = Math.min(room(piece, EdgeName.FRONT_CROTCH), room(piece, EdgeName.BACK_CROTCH));
        double room = Math.min(below, above);
        double dart = Math.min(room(piece, EdgeName.DART_BACK_LEG), room(piece, EdgeName.DART_FRONT_LEG));
        double beside = 2 * (room - BESIDE_PANEL);
        double most = Math.min(beside, 2 * (dart - BESIDE_DART));
        boolean fits = Math.floor(most) >= LEAST_PANEL;
        Part narrower = Part.length(Math.floor(most)).atMost();
        if (width > beside) {
            findings.add(
                    "style.panel.width",
                    below <= above
                            ? Tell.said(
                                    "panel.inseam", Part.length(width), Part.length(room), Part.length(BESIDE_PANEL))
                            : Tell.said(
                                    "panel.centre-seam",
                                    Part.length(width),
                                    Part.length(room),
                                    Part.length(BESIDE_PANEL)),
                    fits ? Tell.said("panel.most-help", narrower) : Tell.said("panel.none-help"));
        } else if (width > most) {
            findings.add(
                    "style.panel.width",
                    Tell.said("panel.dart", Part.length(width), Part.length(dart), Part.length(BESIDE_DART)),
                    fits ? Tell.said("panel.most-or-plain-help", narrower) : Tell.said("panel.none-or-plain-help"));
        }
    }

    /** @param taken what each seam takes in at the waist, mm */
    static boolean panelKeepsItsWidth(Parts parts, double taken, Findings findings) {
        double least = 2 * taken + LEAST_PANEL;
        double width = parts.panelWidth().orElse(least);
        if (width < least) {
            findings.add(
                    "style.panel.width",
                    Tell.said("panel.shaped", Part.length(width), Part.length(taken), Part.length(LEAST_PANEL)),
                    Tell.said("panel.shaped-help", Part.length(Math.ceil(least)).atLeast()));
        }
        return width >= least;
    }

    /** From the side line to where an edge comes nearest to it, mm; infinite where the leg has no such edge. */
    private static double room(Piece piece, EdgeName edge) {
        return piece.edges().stream()
                .filter(e -> e.name() == edge)
                .flatMap(e -> e.line().points().stream())
                .mapToDouble(p -> Math.abs(p.x()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static void knee(Leg leg, Parts parts, Findings findings) {
        KneeEase.Zone zone = KneeEase.zone(leg.order());
        if (!parts.cutAtSide()) {
            findings.add("style.knee shaping", Tell.said("knee.one-piece"), Tell.said("knee.one-piece-help"));
            return;
        }
        if (zone.change() < KneeEase.LEAST) {
            findings.add(
                    "style.knee shaping",
                    Tell.said(
                            "knee.cloth",
                            Part.share(leg.order().reductions().along(), 1),
                            Part.length(zone.change(), 1)),
                    Tell.said("knee.cloth-help"));
        }
        double end = leg.curves().endHeight();
        if (zone.low() < end + 25) {
            Part away = Part.length(Math.abs(zone.middle() - end));
            Part needed = Part.length(zone.half() + 25);
            findings.add(
                    "style.knee shaping",
                    end > zone.middle()
                            ? Tell.said("knee.ends-above", away, needed)
                            : Tell.said("knee.ends-below", away, needed),
                    Tell.said("knee.ends-help"));
        }
    }
}
