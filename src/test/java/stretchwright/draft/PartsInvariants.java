package stretchwright.draft;

import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** What must hold of the parts of a leg for every body and every mix of options (docs/maths/draft.md, Parts). */
final class PartsInvariants {
    private final String who;
    private final Body body;
    private final Style style;
    private final Pattern pattern;
    private final SoftAssertions softly = new SoftAssertions();

    private PartsInvariants(String who, Body body, Style style, Pattern pattern) {
        this.who = who;
        this.body = body;
        this.style = style;
        this.pattern = pattern;
    }

    /**
     * @param plain the same body, cloth and boot drafted in one piece per leg, its crotch curves as long as in this one
     */
    static void check(String who, Body body, Style style, Pattern pattern, Pattern plain) {
        PartsInvariants i = new PartsInvariants(who, body, style, pattern);
        PieceCheck.check(i.softly, who, pattern);
        i.names();
        i.seams();
        i.crotchSeam();
        i.corners();
        i.notchesMeet();
        if (pattern.legs().stream().noneMatch(p -> p.name().leg() == WhichLeg.LEFT)) {
            i.areas(plain);
        }
        PartsReasonsCheck.check(i.softly, who, pattern);
        i.softly.assertAll();
    }

    private void names() {
        Parts parts = style.parts();
        int perLeg = parts.panelWidth().isPresent() ? 3 : parts.cutAtSide() ? 2 : 1;
        long legs =
                pattern.pieces().stream().filter(p -> p.name().kind().isOfLeg()).count();
        softly.assertThat(legs).as(who + " parts").isEqualTo((long) perLeg * (pattern.legsDiffer() ? 2 : 1));
        softly.assertThat(pattern.pieces().stream().map(Piece::name)).as(who).doesNotHaveDuplicates();
        softly.assertThat(pattern.seams().stream().map(Seam::name)).as(who).doesNotHaveDuplicates();
    }

    /** Every seam's sides agree, but for the ease that the knee asks for. */
    private void seams() {
        for (Seam seam : pattern.seams()) {
            if (seam.sides().size() < 2 || seam.role() == Seam.Role.WAISTBAND_JOIN) {
                continue;
            }
            boolean eased = style.parts().kneeShaping()
                    && (seam.role() == Seam.Role.INSEAM
                            || seam.role() == Seam.Role.SIDE_SEAM
                            || seam.role() == Seam.Role.PANEL);
            if (!eased) {
                softly.assertThat(seam.ease()).as(who + " " + seam.name()).isCloseTo(0, within(0.5));
                continue;
            }
            double change = pattern.reasons().stream()
                            .filter(r -> r.dimension().word().endsWith("knee ease"))
                            .findFirst()
                            .orElseThrow()
                            .mm()
                    / 2;
            double want = seam.name().word().contains("front panel")
                    ? -change
                    : seam.name().word().contains("back panel") ? change : -2 * change;
            // the inseam leans a little: its length grows a little less than its height
            softly.assertThat(seam.ease()).as(who + " ease of " + seam.name()).isCloseTo(want, within(1.0));
        }
    }

    private double length(EdgeName edge) {
        return pattern.legs().stream()
                .filter(p -> p.name().leg() != WhichLeg.RIGHT)
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name().equals(edge))
                .mapToDouble(Edge::length)
                .sum();
    }

    /** From waist to waist, through the gusset where there is one. */
    private void crotchSeam() {
        double through = style.parts().gusset().map(Parts.Gusset::length).orElse(0.0);
        softly.assertThat(length(EdgeName.FRONT_CROTCH) + length(EdgeName.BACK_CROTCH) + through)
                .as(who + " crotch seam")
                .isCloseTo(
                        body.mm(Measure.TOTAL_CROTCH_LENGTH)
                                * (1 - pattern.reductions().crotch()),
                        within(0.5));
    }

    private void corners() {
        for (Piece piece : pattern.legs()) {
            if (piece.name().leg() == WhichLeg.RIGHT) {
                continue;
            }
            for (int k = 0; k < piece.edges().size(); k++) {
                Edge a = piece.edges().get(k);
                Edge b = piece.edges().get((k + 1) % piece.edges().size());
                double angle = corner(a.line(), b.line());
                softly.assertThat(angle)
                        .as(who + " " + piece.name() + " corner " + a.name() + " - " + b.name())
                        .isBetween(60.0, gusset(a) || gusset(b) ? 235.0 : 179.9);
                boolean waist = a.name() == EdgeName.WAIST_EDGE || b.name() == EdgeName.WAIST_EDGE;
                boolean centre = crotch(a) || crotch(b);
                if (waist && centre) {
                    softly.assertThat(angle)
                            .as(who + " " + piece.name() + " waist square")
                            .isCloseTo(90, within(3.0));
                }
                if (a.name() == EdgeName.HEM || b.name() == EdgeName.HEM) {
                    softly.assertThat(angle)
                            .as(who + " " + piece.name() + " hem square")
                            .isCloseTo(90, within(2.0));
                }
            }
        }
        for (Seam seam : pattern.seams()) {
            if (seam.role() == Seam.Role.SIDE_SEAM || seam.role() == Seam.Role.PANEL) {
                double both =
                        seam.sides().stream().mapToDouble(this::waistCorner).sum();
                softly.assertThat(both).as(who + " waist over " + seam.name()).isCloseTo(180, within(2.0));
            }
        }
        if (style.parts().gusset().isPresent() && pattern.legs().size() <= 2 && !pattern.legsDiffer()) {
            gussetCorners();
        }
    }

    private double waistCorner(Seam.Side side) {
        Piece piece = pattern.piece(side.piece());
        int at = piece.edges().indexOf(piece.edge(side.edge()));
        int n = piece.edges().size();
        Edge next = piece.edges().get((at + 1) % n);
        Edge before = piece.edges().get((at + n - 1) % n);
        return next.name() == EdgeName.WAIST_EDGE
                ? corner(piece.edge(side.edge()).line(), next.line())
                : corner(before.line(), piece.edge(side.edge()).line());
    }

    /** Where parts meet at a gusset's tip they hold more than a full turn: there lies the hollow of the hooks. */
    private void gussetCorners() {
        Piece gusset = pattern.piece(PieceName.of(PieceKind.GUSSET));
        Piece front = with(EdgeName.FRONT_INSEAM);
        Piece back = with(EdgeName.BACK_INSEAM);
        double inner = corner(front, EdgeName.FRONT_GUSSET_EDGE, EdgeName.FRONT_INSEAM)
                + corner(back, EdgeName.BACK_INSEAM, EdgeName.BACK_GUSSET_EDGE)
                + corner(gusset, EdgeName.LEFT_BACK_EDGE, EdgeName.LEFT_FRONT_EDGE);
        double before = 2 * corner(front, EdgeName.FRONT_CROTCH, EdgeName.FRONT_GUSSET_EDGE)
                + corner(gusset, EdgeName.LEFT_FRONT_EDGE, EdgeName.RIGHT_FRONT_EDGE);
        double behind = 2 * corner(back, EdgeName.BACK_GUSSET_EDGE, EdgeName.BACK_CROTCH)
                + corner(gusset, EdgeName.RIGHT_BACK_EDGE, EdgeName.LEFT_BACK_EDGE);
        for (double round : new double[] {inner, before, behind}) {
            softly.assertThat(round).as(who + " cloth round a gusset's tip").isBetween(335.0, 520.0);
        }
    }

    private Piece with(EdgeName edge) {
        return with(pattern, edge);
    }

    static Piece with(Pattern pattern, EdgeName edge) {
        return pattern.legs().stream()
                .filter(p -> p.edges().stream().anyMatch(e -> e.name().equals(edge)))
                .findFirst()
                .orElseThrow();
    }

    private static double corner(Piece piece, EdgeName a, EdgeName b) {
        return corner(piece.edge(a).line(), piece.edge(b).line());
    }

    private static double corner(Path a, Path b) {
        Point in = a.directionAt(a.length());
        Point out = b.directionAt(0);
        return 180 - Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    }

    /** Notches of one name on the two sides of a side or panel seam and of an inseam lie equally far from the hem. */
    private void notchesMeet() {
        for (Seam seam : pattern.seams()) {
            if (seam.role() != Seam.Role.SIDE_SEAM
                    && seam.role() != Seam.Role.PANEL
                    && seam.role() != Seam.Role.INSEAM
                    && seam.role() != Seam.Role.GUSSET) {
                continue;
            }
            Seam.Side one = seam.sides().get(0);
            Seam.Side other = seam.sides().get(1);
            for (Notch n : pattern.piece(one.piece()).notches()) {
                if (!n.edge().equals(one.edge()) || n.name() == NotchName.KNEE) {
                    continue;
                }
                for (Notch m : pattern.piece(other.piece()).notches()) {
                    if (m.edge().equals(other.edge()) && m.name().equals(n.name())) {
                        double a = fromLow(pattern.piece(one.piece()), n);
                        double b = fromLow(pattern.piece(other.piece()), m);
                        boolean above = isAboveKneeZone(pattern.piece(one.piece()), n);
                        double ease = above ? seam.ease() : 0;
                        softly.assertThat(b - a)
                                .as(who + " " + seam.name() + " notch " + n.name())
                                .isCloseTo(ease, within(above ? 0.8 : 0.5));
                    }
                }
            }
        }
    }

    /** Whether a notch stands at the upper end of the zone that is eased in, or above it. */
    private boolean isAboveKneeZone(Piece piece, Notch notch) {
        return style.parts().kneeShaping()
                && piece.notches().stream()
                        .filter(n -> n.edge() == notch.edge() && n.name() == NotchName.ABOVE_KNEE)
                        .anyMatch(n -> fromLow(piece, notch) >= fromLow(piece, n));
    }

    /** Distance of a notch from the lower end of its edge; of a gusset edge from its middle. */
    private static double fromLow(Piece piece, Notch n) {
        Edge edge = piece.edge(n.edge());
        if (n.name() == NotchName.FRONT || n.name() == NotchName.BACK) {
            return Math.abs(n.along() - edge.length() / 2);
        }
        boolean up = edge.line().end().y() > edge.line().start().y();
        return up ? n.along() : edge.length() - n.along();
    }

    /** Second opinion on the cutting: the parts' areas add up to the leg's, less what is named. */
    private void areas(Pattern plain) {
        double whole = plain.piece(PieceName.of(PieceKind.LEG)).sewLine().area();
        double parts = pattern.pieces().stream()
                .filter(p -> p.name().kind().isOfLeg())
                .mapToDouble(p -> p.sewLine().area())
                .sum();
        double less = 0;
        double give = 30;
        if (style.parts().sideSeam() == Parts.SideSeam.SHAPED) {
            // each edge takes a third of take-in x height above the hip; the new waist edge sags a little
            for (Piece p : pattern.legs()) {
                Path side = p.edge(EdgeName.SIDE_EDGE).line();
                double x = p.name().is(PieceKind.FRONT_LEG)
                        ? side.end().x()
                        : side.start().x();
                double hip = SideCut.lines(style.parts()).get(0);
                double taken = Math.abs(Math.abs(x) - Math.abs(hip));
                double high = Math.max(side.start().y(), side.end().y()) - hip(plain);
                less += (style.parts().panelWidth().isPresent() ? 2 : 1) * taken * high / 3;
            }
            // mm2: the new waist edge may lie 6 mm off the old one
            give = 6
                    * plain.piece(PieceName.of(PieceKind.LEG))
                            .edge(EdgeName.WAIST_EDGE)
                            .length();
        }
        if (style.parts().kneeShaping()) {
            give += 0.02 * whole;
        }
        // what lies in pockets makes the body larger, so that its top edge and hem settle otherwise
        give += style.parts().pockets().isEmpty() ? 0 : 0.015 * whole;
        if (style.parts().gusset().isPresent()) {
            Piece leg = plain.piece(PieceName.of(PieceKind.LEG));
            double taken = GussetCut.taken(leg, style.parts().gusset().get()).orElseThrow();
            double reach = GussetCut.reach(style.parts().gusset().get());
            // drafted for a longer seam, the leg without a gusset gives way differently at the top
            give += 0.01 * whole;
            less += corner(
                            leg.edge(EdgeName.FRONT_CROTCH).line().reversed(),
                            leg.edge(EdgeName.FRONT_INSEAM).line(),
                            reach,
                            taken)
                    + corner(
                            leg.edge(EdgeName.BACK_CROTCH).line(),
                            leg.edge(EdgeName.BACK_INSEAM).line().reversed(),
                            reach,
                            taken);
        }
        softly.assertThat(parts).as(who + " areas").isCloseTo(whole - less, within(give));
        style.parts()
                .gusset()
                .ifPresent(g -> softly.assertThat(pattern.piece(PieceName.of(PieceKind.GUSSET))
                                .sewLine()
                                .area())
                        .as(who + " the kite's area is half length x width")
                        .isCloseTo(g.length() * g.width() / 2, within(2.0)));
    }

    private static double hip(Pattern plain) {
        return plain.level(stretchwright.pattern.Level.Name.HIP).orElseThrow().height();
    }

    /** Area between the straight cut and the corner of two paths that start at one point. */
    private static double corner(Path crotch, Path inseam, double reach, double taken) {
        List<Point> ring =
                new java.util.ArrayList<>(Outline.before(crotch, reach).points());
        List<Point> down =
                new java.util.ArrayList<>(Outline.before(inseam, taken).points());
        java.util.Collections.reverse(ring);
        ring.addAll(down.subList(1, down.size()));
        double area = Polygon.signedArea(ring);
        // positive where the leg loses cloth: the ring runs from the crotch point up the curve and back by the inseam
        return crotch.at(reach).x() > 0 ? -area : area;
    }

    private static boolean gusset(Edge edge) {
        return edge.name() == EdgeName.FRONT_GUSSET_EDGE || edge.name() == EdgeName.BACK_GUSSET_EDGE;
    }

    private static boolean crotch(Edge edge) {
        return edge.name() == EdgeName.FRONT_CROTCH || edge.name() == EdgeName.BACK_CROTCH;
    }
}
