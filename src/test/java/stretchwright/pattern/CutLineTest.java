package stretchwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

class CutLineTest {
    /** By hand: a square of 100 with 10 all round is a square of 120. */
    @Test
    void aSquareGrowsByItsAllowanceWithSharpCorners() {
        assertThat(SamplePattern.cuff().cutLine().area()).isCloseTo((344 + 14) * (64 + 14.0), within(0.01));
    }

    /** By hand: a fold has no allowance, so a half band grows on three sides only. */
    @Test
    void aFoldEdgeStaysWhereItIs() {
        assertThat(SamplePattern.waistband().cutLine().box().minX()).isZero();
        assertThat(SamplePattern.waistband().cutLine().area()).isCloseTo((345 + 7) * (130 + 14.0), within(0.01));
    }

    /** A tip sharper than 47 degrees is cut off square, never farther out than 2.5 times the allowance. */
    @Test
    void aSharpTipIsBlunted() {
        Point a = Point.ORIGIN;
        Point b = new Point(200, 20);
        Point c = new Point(0, 40);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(a, b), 7),
                new Edge(EdgeName.RIGHT_EDGE, Path.of(b, c), 7),
                new Edge(EdgeName.LEFT_EDGE, Path.of(c, a), 7));
        Polygon cut = CutLine.around(edges);
        assertThat(cut.box().maxX()).isCloseTo(200 + 2.5 * 7, within(0.02));
    }

    /**
     * By hand: a fold that rises at 45 degrees towards an upright seam; turned down, the seam lies level, 7 mm above the
     * corner less 7 mm that the seam's own allowance runs beyond it, and cuts off all of the raw edge that lies higher.
     */
    @Test
    void aSeamThatLeansFarCutsTheTurnedLayerOffWithoutASpike() {
        List<Point> fold = new ArrayList<>(List.of(new Point(100, 50)));
        for (int i = 1; i <= 50; i++) {
            fold.add(new Point(100 - i, 50 - i + 0.004 * i * i));
        }
        fold.add(new Point(0, 10));
        List<Edge> edges = List.of(
                new Edge(EdgeName.HEM, Path.of(new Point(0, -100), new Point(100, -100)), 7),
                new Edge(EdgeName.FRONT_CROTCH, Path.of(new Point(100, -100), new Point(100, 50)), 7),
                new Edge(EdgeName.WAIST_EDGE, Path.of(fold.toArray(Point[]::new)), 30, true),
                new Edge(EdgeName.BACK_CROTCH, Path.of(new Point(0, 10), new Point(0, -100)), 7));
        Polygon cut = CutLine.around(edges);
        assertThat(cut.box().maxY()).isCloseTo(57, within(0.1));
        List<Point> ring = cut.points();
        for (int i = 0; i < ring.size(); i++) {
            Point in = ring.get((i + 1) % ring.size()).minus(ring.get(i)).unit();
            Point out = ring.get((i + 2) % ring.size())
                    .minus(ring.get((i + 1) % ring.size()))
                    .unit();
            assertThat(in.dot(out)).as("no way there and back").isGreaterThan(-0.9);
        }
    }

    /** By hand: 8 mm straight up from the hem, then 1 mm out for 2 mm up on each side: at 50 mm the leg is 42 mm wider than at the hem. */
    @Test
    void aTurnedHemIsAsWideAsWhatItLiesOn() {
        Point[] right = {new Point(100, 0), new Point(100, 8), new Point(150, 108)};
        Point[] left = {new Point(-50, 108), new Point(0, 8), new Point(0, 0)};
        Polygon cut = CutLine.around(List.of(
                new Edge(EdgeName.HEM, Path.of(new Point(0, 0), new Point(100, 0)), 50, true),
                new Edge(EdgeName.BACK_INSEAM, Path.of(right), 7),
                new Edge(EdgeName.WAIST_EDGE, Path.of(new Point(150, 108), new Point(-50, 108)), 7),
                new Edge(EdgeName.FRONT_INSEAM, Path.of(left), 7)));
        assertThat(cut.box().minY()).isCloseTo(-50, within(0.02));
        double high = width(cut, 49.9);
        assertThat(width(cut, -49.9)).isCloseTo(high, within(0.1));
        assertThat(high).isCloseTo(100 + 41.9 + 14 * Math.sqrt(1.25), within(0.1));
        assertThat(width(cut, -5)).isCloseTo(width(cut, 5), within(0.1));
    }

    private static double width(Polygon polygon, double y) {
        List<Point> p = polygon.points();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            if ((a.y() - y) * (b.y() - y) < 0) {
                double x = a.towards(b, (y - a.y()) / (b.y() - a.y())).x();
                least = Math.min(least, x);
                most = Math.max(most, x);
            }
        }
        return most - least;
    }

    /** Second opinion: where all allowances are equal and no corner is blunted, the area is that of the JTS mitre buffer. */
    @Test
    void aHollowTighterThanTheAllowanceLeavesNoLoop() {
        List<Point> hollow = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            double angle = Math.PI + Math.PI * i / 20;
            hollow.add(new Point(50 - 4 * Math.cos(angle - Math.PI), 40 + 4 * Math.sin(angle)));
        }
        List<Point> top = new ArrayList<>();
        top.add(new Point(100, 40));
        for (int i = hollow.size() - 1; i >= 0; i--) {
            top.add(hollow.get(i));
        }
        top.add(new Point(0, 40));
        Point a = Point.ORIGIN;
        Point b = new Point(100, 0);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(a, b), 7),
                new Edge(EdgeName.RIGHT_EDGE, Path.of(b, top.get(0)), 7),
                new Edge(EdgeName.UPPER_EDGE, new Path(top), 7),
                new Edge(EdgeName.LEFT_EDGE, Path.of(top.get(top.size() - 1), a), 7));
        Polygon cut = CutLine.around(edges);
        org.locationtech.jts.geom.Polygon sew = jts(sewLine(edges));
        double expected = new BufferOp(
                        sew, new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5))
                .getResultGeometry(7)
                .getArea();
        assertThat(jts(cut.points()).isValid()).isTrue();
        assertThat(cut.area()).isCloseTo(expected, within(1.0));
    }

    /** From a draft: a gusset's edge before a crotch curve whose first chord is shorter than what the mitre takes of it. */
    @Test
    void aCornerBeforeAShortChordLeavesNoSpike() {
        Point corner = new Point(164.41, 584.28);
        Point start = new Point(144.75, 629.74);
        Path curve = Path.of(
                start,
                new Point(144.59, 630.92),
                new Point(144.23, 633.52),
                new Point(143.88, 636.23),
                new Point(143.52, 639.04));
        Path rest = Path.of(curve.end(), new Point(0, 639.04), new Point(0, 584.28), corner);
        for (double allowance = 3; allowance <= 40; allowance += 0.1) {
            Polygon cut = CutLine.around(List.of(
                    new Edge(EdgeName.BACK_INSEAM, rest, allowance),
                    new Edge(EdgeName.BACK_GUSSET_EDGE, Path.of(corner, start), allowance),
                    new Edge(EdgeName.BACK_CROTCH, curve, allowance)));
            assertThat(jts(cut.points()).isValid()).as("%.1f mm", allowance).isTrue();
        }
    }

    private static List<Point> sewLine(List<Edge> edges) {
        List<Point> out = new ArrayList<>();
        edges.forEach(
                e -> out.addAll(e.line().points().subList(0, e.line().points().size() - 1)));
        return out;
    }

    private static org.locationtech.jts.geom.Polygon jts(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return new GeometryFactory().createPolygon(ring);
    }

    /**
     * By hand: a trapezium whose sides lean in by 1 in 4 up to a fold at height 100. Turned down by 20 the raw edge must be
     * as wide as the piece is at height 80: 10 wider than the fold, 5 on each side, plus the same allowance.
     */
    @Test
    void aTurnedEdgeIsCutAsTheMirrorImageOfWhatItWillLieOn() {
        Path base = Path.of(new Point(0, 0), new Point(200, 0));
        Path right = Path.of(new Point(200, 0), new Point(175, 100));
        Path top = Path.of(new Point(175, 100), new Point(25, 100));
        Path left = Path.of(new Point(25, 100), new Point(0, 0));
        Polygon cut = CutLine.around(List.of(
                new Edge(EdgeName.LOWER_EDGE, base, 10),
                new Edge(EdgeName.RIGHT_EDGE, right, 10),
                new Edge(EdgeName.UPPER_EDGE, top, 20, true),
                new Edge(EdgeName.LEFT_EDGE, left, 10)));
        double beside = 10 * Math.sqrt(1 + 0.25 * 0.25);
        assertThat(cut.points())
                .anySatisfy(p -> near(p, 180 + beside, 120))
                .anySatisfy(p -> near(p, 175 + beside, 100))
                .anySatisfy(p -> near(p, 25 - beside, 100))
                .anySatisfy(p -> near(p, 20 - beside, 120));
    }

    private static void near(Point p, double x, double y) {
        assertThat(p.distance(new Point(x, y))).isLessThan(0.02);
    }
}
