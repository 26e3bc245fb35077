package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Section 9 of the drafting method: what must hold for every body. */
final class Invariants {
    private Invariants() {}

    static void check(String who, Body body, Pattern pattern) {
        check(who, body, pattern, Style.usual(Style.Leg.ANKLE));
    }

    static void check(String who, Body body, Pattern pattern, Style style) {
        SoftAssertions softly = new SoftAssertions();
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        for (Piece piece : pattern.pieces()) {
            simple(softly, who + " " + piece.name() + " sew line", piece.sewLine());
            simple(softly, who + " " + piece.name() + " cut line", piece.cutLine());
        }
        seamLengths(softly, who, pattern);
        crotchSeam(softly, who, body, pattern, style.top());
        levels(softly, who, pattern);
        corners(softly, who, leg);
        lowerEdge(softly, who, leg);
        curvature(softly, who, pattern);
        notches(softly, who, pattern, leg);
        softly.assertAll();
    }

    private static void simple(SoftAssertions softly, String what, Polygon polygon) {
        Coordinate[] ring = new Coordinate[polygon.points().size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = polygon.points().get(i % polygon.points().size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        softly.assertThat(new GeometryFactory().createPolygon(ring).isValid())
                .as(what + " is simple")
                .isTrue();
    }

    private static void seamLengths(SoftAssertions softly, String who, Pattern pattern) {
        for (Seam seam : pattern.seams()) {
            if (seam.sides().size() == 2) {
                softly.assertThat(seam.sides().get(1).length()
                                - seam.sides().get(0).length())
                        .as(who + " " + seam.name() + " ease")
                        .isCloseTo(seam.ease(), within(0.5));
                if (seam.role() != Seam.Role.WAISTBAND_JOIN) {
                    softly.assertThat(seam.ease()).as(who + " " + seam.name()).isCloseTo(0, within(0.5));
                }
            }
        }
    }

    private static void crotchSeam(SoftAssertions softly, String who, Body body, Pattern pattern, TopEnd top) {
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        double front = leg.edge(EdgeName.FRONT_CROTCH).length();
        double back = leg.edge(EdgeName.BACK_CROTCH).length();
        double target =
                (body.mm(Measure.TOTAL_CROTCH_LENGTH) - 2 * top.dropBelowWaist() + top.frontRaise() + top.backRaise())
                        * (1 - pattern.reductions().crotch());
        // what was only estimated may give way for the waist edge, what was measured not
        double gives = body.isGiven(Measure.TOTAL_CROTCH_LENGTH) ? 0 : Rise.ESTIMATE_GIVES * target;
        softly.assertThat(front + back).as(who + " crotch seam").isCloseTo(target, within(0.5 + gives));
        softly.assertThat(back).as(who + " back crotch longer").isGreaterThan(front);
        softly.assertThat(leg.edge(EdgeName.BACK_CROTCH).line().end().y())
                .as(who + " back waist higher")
                .isGreaterThan(leg.edge(EdgeName.FRONT_CROTCH).line().start().y());
    }

    private static void levels(SoftAssertions softly, String who, Pattern pattern) {
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        double above = Double.POSITIVE_INFINITY;
        for (Level level : pattern.levels()) {
            softly.assertThat(level.height())
                    .as(who + " " + level.name() + " in order")
                    .isLessThan(above);
            above = level.height();
            if (level.name() == Level.Name.WAIST
                    || level.name() == Level.Name.CROTCH
                    || level.name() == Level.Name.HEM) {
                continue;
            }
            softly.assertThat(measured(leg, level) * (level.name().wholeBody() ? 2 : 1))
                    .as(who + " width at " + level.name())
                    .isCloseTo(level.width(), within(0.5));
        }
    }

    /** Second opinion: width of the outline along a horizontal through it, from all crossings. */
    private static double measured(Piece leg, Level level) {
        List<Point> p = leg.sewLine().points();
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        double y = level.height() + 1e-7;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            if ((a.y() - y) * (b.y() - y) < 0) {
                double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
                min = Math.min(min, x);
                max = Math.max(max, x);
            }
        }
        return max - min;
    }

    private static void corners(SoftAssertions softly, String who, Piece leg) {
        softly.assertThat(corner(leg, EdgeName.FRONT_CROTCH, EdgeName.FRONT_INSEAM)
                        + corner(leg, EdgeName.BACK_INSEAM, EdgeName.BACK_CROTCH))
                .as(who + " crotch points lie flat")
                .isCloseTo(180, within(2.0));
        softly.assertThat(corner(leg, EdgeName.FRONT_INSEAM, EdgeName.HEM)
                        + corner(leg, EdgeName.HEM, EdgeName.BACK_INSEAM))
                .as(who + " hem lies flat")
                .isCloseTo(180, within(2.0));
        softly.assertThat(corner(leg, EdgeName.BACK_CROTCH, leg.edges().get(3).name()))
                .as(who + " centre back square")
                .isCloseTo(90, within(3.0));
        softly.assertThat(corner(leg, EdgeName.WAIST_EDGE, EdgeName.FRONT_CROTCH))
                .as(who + " centre front square")
                .isCloseTo(90, within(3.0));
    }

    /** Interior angle where one edge ends and the next begins, degrees. */
    private static double corner(Piece leg, EdgeName one, EdgeName next) {
        Path a = leg.edge(one).line();
        Path b = leg.edge(next).line();
        Point in = a.directionAt(a.length());
        Point out = b.directionAt(0);
        return 180 - Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    }

    private static void curvature(SoftAssertions softly, String who, Pattern pattern) {
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        softly.assertThat(signChanges(leg.edge(EdgeName.FRONT_CROTCH).line(), -1e9))
                .as(who + " front crotch curve bends one way")
                .isZero();
        softly.assertThat(signChanges(leg.edge(EdgeName.BACK_CROTCH).line(), -1e9))
                .as(who + " back crotch curve bends one way")
                .isZero();
        double end = lowerEnd(pattern);
        softly.assertThat(signChanges(leg.edge(EdgeName.FRONT_INSEAM).line(), end))
                .as(who + " inflections of the front inseam")
                .isLessThanOrEqualTo(1);
        softly.assertThat(signChanges(leg.edge(EdgeName.BACK_INSEAM).line(), end))
                .as(who + " inflections of the back inseam")
                .isLessThanOrEqualTo(1);
    }

    /** The lower edge: level and square at both inseams, and no corner on the way. */
    private static void lowerEdge(SoftAssertions softly, String who, Piece leg) {
        Path hem = leg.edge(EdgeName.HEM).line();
        softly.assertThat(hem.start().y())
                .as(who + " hem ends level")
                .isCloseTo(hem.end().y(), within(0.011));
        softly.assertThat(corner(leg, EdgeName.FRONT_INSEAM, EdgeName.HEM))
                .as(who + " hem square to the front inseam")
                .isCloseTo(90, within(3.0));
        List<Point> p = hem.points();
        for (int i = 1; i + 1 < p.size(); i++) {
            Point a = p.get(i).minus(p.get(i - 1));
            Point b = p.get(i + 1).minus(p.get(i));
            softly.assertThat(Math.toDegrees(Math.abs(Math.atan2(a.cross(b), a.dot(b)))))
                    .as(who + " no corner in the hem")
                    .isLessThan(8);
        }
    }

    /** Above the boot's tongue, or above the straight run over an ankle hem. */
    private static double lowerEnd(Pattern pattern) {
        Optional<Level> top = pattern.level(Level.Name.BOOT_TOP);
        double edge = pattern.piece(PieceName.of(PieceKind.LEG))
                .edge(EdgeName.HEM)
                .line()
                .start()
                .y();
        if (top.isPresent() && top.get().height() - edge >= LegLine.SHORTEST_FLARE) {
            return top.get().height() + LegLine.ANKLE_TURN + 1;
        }
        return pattern.level(Level.Name.ANKLE).map(Level::height).orElse(edge) + LegLine.ANKLE_TURN + 1;
    }

    /** Turns that change hand, above a height; turns below a ten-thousandth of a radian per chord are grid noise. */
    private static int signChanges(Path path, double above) {
        List<Point> p = path.points();
        int changes = 0;
        int last = 0;
        for (int i = 1; i + 1 < p.size(); i++) {
            if (p.get(i).y() < above) {
                continue;
            }
            Point a = p.get(i).minus(p.get(i - 1));
            Point b = p.get(i + 1).minus(p.get(i));
            double turn = Math.atan2(a.cross(b), a.dot(b));
            // a point on the 0.01 mm grid may turn a chord by 0.014 mm over its length
            double noise = 0.015 * (1 / a.norm() + 1 / b.norm());
            int sign = Math.abs(turn) < noise ? 0 : (int) Math.signum(turn);
            if (sign != 0 && last != 0 && sign != last) {
                changes++;
            }
            last = sign == 0 ? last : sign;
        }
        return changes;
    }

    private static void notches(SoftAssertions softly, String who, Pattern pattern, Piece leg) {
        for (NotchName name : List.of(NotchName.KNEE, NotchName.BOOT_TOP)) {
            List<Notch> pair =
                    leg.notches().stream().filter(n -> n.name().equals(name)).toList();
            if (pair.isEmpty()
                    && (name == NotchName.BOOT_TOP
                            || pattern.level(Level.Name.KNEE).isEmpty())) {
                continue;
            }
            assertThat(pair).as(who + " " + name).hasSize(2);
            Edge front = leg.edge(EdgeName.FRONT_INSEAM);
            double fromHemFront = front.length()
                    - pair.stream()
                            .filter(n -> n.edge() == EdgeName.FRONT_INSEAM)
                            .findFirst()
                            .orElseThrow()
                            .along();
            double fromHemBack = pair.stream()
                    .filter(n -> n.edge() == EdgeName.BACK_INSEAM)
                    .findFirst()
                    .orElseThrow()
                    .along();
            softly.assertThat(fromHemBack)
                    .as(who + " " + name + " notches meet")
                    .isCloseTo(fromHemFront, within(0.5));
        }
    }
}
