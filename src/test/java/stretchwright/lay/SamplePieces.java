package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Names;
import stretchwright.pattern.Piece;

/** Pieces with plain or curved edges for tests of the lay. Invented. */
final class SamplePieces {
    private SamplePieces() {}

    /** A piece with no allowance, its cut line through these points. */
    static Piece plain(String name, int cut, boolean mirrored, boolean onFold, Point... corners) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            edges.add(new Edge(EdgeName.values()[i], Path.of(corners[i], corners[(i + 1) % corners.length]), 0));
        }
        double middle = (corners[0].x() + corners[1].x()) / 2;
        Grain grain = new Grain(new Point(middle, 10), new Point(middle, 20));
        return Piece.of(Names.piece(name), cut, mirrored, onFold, edges, grain, List.of(), List.of());
    }

    static Piece rectangle(String name, int cut, double width, double height) {
        return plain(
                name,
                cut,
                false,
                false,
                Point.ORIGIN,
                new Point(width, 0),
                new Point(width, height),
                new Point(0, height));
    }

    /** A leg with curved inseams and crotch, about 240 corners, its measures spread by the seed. */
    static Piece curvedLeg(RandomStream random) {
        double height = random.between(600, 1050);
        double half = random.between(170, 260);
        double knee = half * random.between(0.62, 0.75);
        double fork = random.between(20, 60);
        double crotch = height * random.between(0.68, 0.75);
        List<Point> back =
                curve(new Point(knee * 1.1, 0), new Point(knee * 0.8, crotch / 2), new Point(half + fork, crotch));
        List<Point> backRise = curve(
                new Point(half + fork, crotch), new Point(half - 30, crotch + 20), new Point(half - 50, height + 30));
        List<Point> frontRise = curve(
                new Point(-half + 30, height), new Point(-half + 20, crotch + 20), new Point(-half - fork / 2, crotch));
        List<Point> front = curve(
                new Point(-half - fork / 2, crotch), new Point(-knee * 0.8, crotch / 2), new Point(-knee * 1.1, 0));
        List<Edge> edges = List.of(
                new Edge(EdgeName.HEM, Path.of(new Point(-knee * 1.1, 0), new Point(knee * 1.1, 0)), 7),
                new Edge(EdgeName.BACK_INSEAM, new Path(back), 7),
                new Edge(EdgeName.BACK_CROTCH, new Path(backRise), 7),
                new Edge(
                        EdgeName.WAIST_EDGE,
                        Path.of(new Point(half - 50, height + 30), new Point(-half + 30, height)),
                        7),
                new Edge(EdgeName.FRONT_CROTCH, new Path(frontRise), 7),
                new Edge(EdgeName.FRONT_INSEAM, new Path(front), 7));
        Grain grain = new Grain(new Point(0, 100), new Point(0, height - 100));
        return Piece.of(Names.piece("leg"), 2, true, false, edges, grain, List.of(), List.of());
    }

    /** A parabola through the ends, drawn by its middle control point, in 60 chords. */
    private static List<Point> curve(Point from, Point control, Point to) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            double t = i / 60.0;
            out.add(from.towards(control, t).towards(control.towards(to, t), t));
        }
        return out;
    }
}
