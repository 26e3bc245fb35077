package stretchwright.lay;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Shape;
import stretchwright.pattern.Piece;

/** A piece where a placement puts it, in the axes of the lay. */
final class OnCloth {
    private OnCloth() {}

    static Polygon outline(Piece piece, Lay.Placement p) {
        Polygon line = p.unfolded() ? Shape.unfolded(piece.cutLine()) : piece.cutLine();
        return line.placed(p.mirrored(), p.rotation(), new Point(p.x(), p.y()));
    }

    /** A point of the piece. */
    static Point at(Point of, Lay.Placement p) {
        return (p.mirrored() ? of.mirrored() : of).turned(p.rotation()).plus(new Point(p.x(), p.y()));
    }

    /** Both ends of the grain line, in the order of the piece. */
    static List<Point> grain(Piece piece, Lay.Placement p) {
        return Stream.of(piece.grain().from(), piece.grain().to())
                .map(q -> at(q, p))
                .toList();
    }

    static List<Polygon> outlines(Lay lay, List<Piece> pieces) {
        return lay.placements().stream()
                .map(p -> outline(
                        pieces.stream()
                                .filter(q -> q.name().equals(p.piece()))
                                .findFirst()
                                .orElseThrow(),
                        p))
                .toList();
    }
}
