package stretchwright.draft;

import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** What must hold of bands, casings, darts and raised waists, measured on the drawn pieces. */
final class TopInvariants {
    private TopInvariants() {}

    static void check(String who, Body body, Pattern pattern, Style style) {
        SoftAssertions softly = new SoftAssertions();
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        double topEdge = 2
                * leg.edges().stream()
                        .filter(e -> e.name().isWaist())
                        .mapToDouble(Edge::length)
                        .sum();
        if (style.top().band().shape() == TopEnd.Band.Shape.CASING) {
            casing(softly, who, leg, style);
        } else {
            band(softly, who, body, pattern, style, topEdge);
        }
        if (has(leg, EdgeName.DART_BACK_LEG)) {
            dart(softly, who, leg, style);
        }
        marksLieInside(softly, who, pattern);
        reasons(softly, who, pattern);
        softly.assertAll();
    }

    private static boolean has(Piece piece, EdgeName edge) {
        return piece.has(edge);
    }

    private static void band(
            SoftAssertions softly, String who, Body body, Pattern pattern, Style style, double topEdge) {
        Piece band = pattern.piece(PieceName.of(PieceKind.WAISTBAND));
        double lower = 2 * band.edge(EdgeName.LOWER_EDGE).length();
        double upper = 2 * band.edge(EdgeName.UPPER_EDGE).length();
        double drop = style.dropBelowWaist();
        double girth = TrunkProfile.of(body).girthBelowWaist(drop);
        double held = girth * (1 - pattern.reductions().waistband());
        // wider only where the hips must pass, and still holding
        softly.assertThat(lower)
                .as(who + " lower edge")
                .isBetween(Math.min(held, topEdge) - 0.5, Math.min(0.98 * girth, topEdge) + 0.5);
        if (lower > Math.min(held, topEdge) + 0.5) {
            softly.assertThat(body.mm(Measure.HIP_GIRTH)).as(who + " hips").isGreaterThan(lower);
        }
        softly.assertThat(lower).as(who + " band no longer than what it holds").isLessThan(topEdge + 0.5);
        if (style.top().band().shape() != TopEnd.Band.Shape.CONTOURED) {
            return;
        }
        double above = TrunkProfile.of(body).girthBelowWaist(drop - style.bandHeight());
        softly.assertThat(upper).as(who + " upper edge").isCloseTo(above * lower / girth, within(0.5));
        Piece facing = pattern.piece(PieceName.of(PieceKind.WAISTBAND_FACING));
        softly.assertThat(facing.sewLine())
                .as(who + " facing is the band again")
                .isEqualTo(band.sewLine());
        // r2 - r1 = finished height, everywhere: both arcs have one centre on the fold
        Point centre = centre(band.edge(EdgeName.LOWER_EDGE).line());
        for (Point p : band.edge(EdgeName.UPPER_EDGE).line().points()) {
            double apart = centre.y() > 0
                    ? band.edge(EdgeName.LOWER_EDGE).line().end().distance(centre) - p.distance(centre)
                    : p.distance(centre)
                            - band.edge(EdgeName.LOWER_EDGE).line().end().distance(centre);
            if (Math.abs(centre.y()) < 1e6) {
                softly.assertThat(apart).as(who + " height of the band").isCloseTo(style.bandHeight(), within(0.1));
            }
        }
        softly.assertThat(corner(band, EdgeName.LOWER_EDGE, EdgeName.CENTRE_BACK_END))
                .as(who + " square end")
                .isCloseTo(90, within(1.0));
        softly.assertThat(corner(band, EdgeName.FOLD, EdgeName.LOWER_EDGE))
                .as(who + " square fold")
                .isCloseTo(90, within(1.0));
    }

    /** Of a circle through an arc's two ends that is square to the fold at the first; from its chord, by hand. */
    private static Point centre(Path arc) {
        Point end = arc.end();
        return new Point(0, end.dot(end) / (2 * end.y()));
    }

    private static void casing(SoftAssertions softly, String who, Piece leg, Style style) {
        Edge edge = leg.edge(EdgeName.WAIST_EDGE);
        softly.assertThat(edge.allowance()).as(who + " turn").isCloseTo(style.bandHeight() + 6, within(1e-9));
        // folded down, the turned layer ends on the cut line of the seam below: mirror the corner in the fold's end
        mirrored(
                softly,
                who + " front",
                leg,
                edge.line().end(),
                edge.line().directionAt(edge.length()),
                edge.allowance());
        Edge back = has(leg, EdgeName.BACK_WAIST_EDGE) ? leg.edge(EdgeName.BACK_WAIST_EDGE) : edge;
        mirrored(softly, who + " back", leg, back.line().start(), back.line().directionAt(0), back.allowance());
    }

    private static void mirrored(SoftAssertions softly, String who, Piece leg, Point corner, Point along, double turn) {
        Point outward = along.left().times(-1);
        for (double depth : new double[] {0.3 * turn, 0.7 * turn}) {
            double above = reach(leg.cutLine(), corner.plus(outward.times(depth)), corner, along);
            double below = reach(leg.cutLine(), corner.minus(outward.times(depth)), corner, along);
            softly.assertThat(above).as(who + " casing lies flat " + depth).isCloseTo(below, within(1.0));
        }
    }

    /** How far the cut line lies from a place, along the fold, on the side of the seam. */
    private static double reach(Polygon outline, Point from, Point corner, Point along) {
        double nearest = Double.POSITIVE_INFINITY;
        List<Point> p = outline.points();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            Point chord = b.minus(a);
            double across = along.cross(chord);
            if (Math.abs(across) < 1e-9) {
                continue;
            }
            double t = a.minus(from).cross(chord) / across;
            double u = a.minus(from).cross(along) / across;
            if (u >= 0 && u <= 1 && Math.abs(t) < Math.abs(nearest) && Math.abs(t) < 80) {
                nearest = t;
            }
        }
        return nearest;
    }

    private static void dart(SoftAssertions softly, String who, Piece leg, Style style) {
        Path back = leg.edge(EdgeName.DART_BACK_LEG).line();
        Path front = leg.edge(EdgeName.DART_FRONT_LEG).line();
        softly.assertThat(back.length()).as(who + " legs of the dart").isCloseTo(front.length(), within(0.05));
        double closed = corner(leg, EdgeName.BACK_WAIST_EDGE, EdgeName.DART_BACK_LEG)
                + corner(leg, EdgeName.DART_FRONT_LEG, EdgeName.WAIST_EDGE);
        softly.assertThat(closed)
                .as(who + " waist edge is smooth where the dart closes")
                .isCloseTo(180, within(2.0));
        double hip = leg.marks().stream()
                .filter(m -> m.name() == MarkName.HIP)
                .map(Mark::line)
                .mapToDouble(l -> l.start().y())
                .findFirst()
                .orElseThrow();
        softly.assertThat(back.end().y() - hip)
                .as(who + " tip above the hip line")
                .isGreaterThan(39);
        double width = back.start().distance(front.end());
        softly.assertThat(width).as(who + " width of the dart").isBetween(Darts.LEAST - 0.1, 0.36 * back.length());
        // nothing is cut out at the mouth: the cut line bridges it
        softly.assertThat(leg.cutLine().contains(back.start().towards(front.end(), 0.5)))
                .as(who + " the dart is folded and not cut out")
                .isTrue();
        softly.assertThat(style.top().back()).isEqualTo(TopEnd.BackShape.DARTS);
    }

    private static void marksLieInside(SoftAssertions softly, String who, Pattern pattern) {
        GeometryFactory maker = new GeometryFactory();
        for (Piece piece : pattern.pieces()) {
            Geometry inside = polygon(maker, piece.cutLine()).buffer(0.05);
            for (Mark mark : piece.marks()) {
                Coordinate[] line = mark.line().points().stream()
                        .map(p -> new Coordinate(p.x(), p.y()))
                        .toArray(Coordinate[]::new);
                softly.assertThat(inside.covers(maker.createLineString(line)))
                        .as(who + " " + piece.name() + " mark " + mark.name() + " lies inside")
                        .isTrue();
            }
        }
    }

    private static Geometry polygon(GeometryFactory maker, Polygon outline) {
        Coordinate[] ring = new Coordinate[outline.points().size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = outline.points().get(i % outline.points().size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return maker.createPolygon(ring);
    }

    /** Each reason's value against the drawn piece. */
    private static void reasons(SoftAssertions softly, String who, Pattern pattern) {
        for (Reason reason : pattern.reasons()) {
            Optional<Double> drawn = drawn(reason.dimension().word(), pattern);
            drawn.ifPresent(mm -> softly.assertThat(reason.mm())
                    .as(who + " " + reason.dimension().word())
                    .isCloseTo(mm, within(0.5)));
        }
    }

    private static Optional<Double> drawn(String dimension, Pattern pattern) {
        return switch (dimension) {
            case "waistband: lower edge all round" ->
                Optional.of(2
                        * pattern.piece(PieceName.of(PieceKind.WAISTBAND))
                                .edge(EdgeName.LOWER_EDGE)
                                .length());
            case "waistband: upper edge all round" ->
                Optional.of(2
                        * pattern.piece(PieceName.of(PieceKind.WAISTBAND))
                                .edge(EdgeName.UPPER_EDGE)
                                .length());
            case "waistband: height" ->
                Optional.of(pattern.piece(PieceName.of(PieceKind.WAISTBAND))
                        .edge(EdgeName.CENTRE_BACK_END)
                        .length());
            case "leg: turned down at the waist" ->
                Optional.of(pattern.seam(Seam.Role.CASING).orElseThrow().allowance());
            case "key pocket: width" ->
                Optional.of(pattern.piece(PieceName.of(PieceKind.KEY_POCKET))
                        .edge(EdgeName.LOWER_EDGE)
                        .length());
            case "key pocket: depth" ->
                Optional.of(pattern.piece(PieceName.of(PieceKind.KEY_POCKET))
                        .edge(EdgeName.LEFT_SIDE)
                        .length());
            case "waist elastic: cut length" ->
                Optional.of(notion(pattern, NotionName.WAIST_ELASTIC).cut());
            case "cord: cut length" ->
                Optional.of(notion(pattern, NotionName.CORD).cut());
            case "leg: dart width" ->
                Optional.of(pattern.piece(PieceName.of(PieceKind.LEG))
                        .edge(EdgeName.DART_BACK_LEG)
                        .line()
                        .start()
                        .distance(pattern.piece(PieceName.of(PieceKind.LEG))
                                .edge(EdgeName.DART_FRONT_LEG)
                                .line()
                                .end()));
            case "leg: dart length" ->
                Optional.of(pattern.piece(PieceName.of(PieceKind.LEG))
                        .edge(EdgeName.DART_FRONT_LEG)
                        .length());
            default -> Optional.empty();
        };
    }

    private static Notion notion(Pattern pattern, NotionName name) {
        return pattern.notions().stream()
                .filter(n -> n.name() == name)
                .findFirst()
                .orElseThrow();
    }

    /** Interior angle where one edge ends and the next begins, degrees. */
    private static double corner(Piece piece, EdgeName one, EdgeName next) {
        Path a = piece.edge(one).line();
        Path b = piece.edge(next).line();
        Point in = a.directionAt(a.length());
        Point out = b.directionAt(0);
        return 180 - Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    }
}
