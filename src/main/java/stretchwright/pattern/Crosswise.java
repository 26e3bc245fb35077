package stretchwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** Pieces that are cut crosswise: their grain runs across them, and on the cloth they lie turned by a quarter. */
public final class Crosswise {
    /** Of the width at the middle of the grain line; what is left on both sides keeps the arrow inside. */
    private static final double LONG = 0.6;

    private Crosswise() {}

    /** The same piece with its grain across it, at the middle of what was its grain line. */
    public static Piece grained(Piece piece) {
        double y = (piece.grain().from().y() + piece.grain().to().y()) / 2;
        List<Double> at = crossings(piece.sewLine().points(), y);
        double left = at.get(0);
        double right = at.get(at.size() - 1);
        double margin = (1 - LONG) / 2 * (right - left);
        Grain across = new Grain(new Point(left + margin, y).onGrid(), new Point(right - margin, y).onGrid());
        return new Piece(
                piece.name(),
                piece.cut(),
                piece.mirrored(),
                piece.onFold(),
                piece.edges(),
                across,
                piece.notches(),
                piece.marks(),
                piece.cutLine());
    }

    private static List<Double> crossings(List<Point> p, double y) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            if ((a.y() <= y) != (b.y() <= y)) {
                out.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
            }
        }
        out.sort(Comparator.naturalOrder());
        return out;
    }

    /** As it lies on the cloth: whole, for no fold runs across the cloth, and turned so that its grain stands. */
    public static Piece laid(Piece piece) {
        List<Edge> edges = piece.onFold() ? whole(piece.edges()) : piece.edges();
        Polygon cutLine = Folded.whole(piece);
        return new Piece(
                piece.name(),
                piece.cut(),
                piece.mirrored(),
                false,
                edges.stream().map(e -> e.on(turned(e.line()))).toList(),
                new Grain(turned(piece.grain().from()), turned(piece.grain().to())),
                piece.notches(),
                piece.marks().stream()
                        .map(m -> new Mark(m.name(), m.kind(), turned(m.line())))
                        .toList(),
                new Polygon(cutLine.points().stream().map(Crosswise::turned).toList()));
    }

    /** Both halves, from one end of the fold to the other and back in the mirror. */
    private static List<Edge> whole(List<Edge> half) {
        int fold = 0;
        while (!half.get(fold).line().points().stream().allMatch(p -> p.x() == 0)) {
            fold++;
        }
        List<Edge> out = new ArrayList<>();
        for (int i = 1; i < half.size(); i++) {
            out.add(half.get((fold + i) % half.size()));
        }
        for (int i = half.size() - 2; i >= 0; i--) {
            Edge e = out.get(i);
            out.add(e.on(
                    new Path(e.line().points().stream().map(Point::mirrored).toList()).reversed()));
        }
        return out;
    }

    private static Path turned(Path line) {
        return new Path(line.points().stream().map(Crosswise::turned).toList());
    }

    private static Point turned(Point p) {
        return new Point(-p.y() + 0.0, p.x() + 0.0);
    }
}
