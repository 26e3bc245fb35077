package stretchwright.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;

/** The mirror image of a piece, its outline counter-clockwise again: a right leg as it lies right side up. */
final class Mirror {
    private Mirror() {}

    static Piece of(Piece piece) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            edges.add(edge.on(mirrored(edge.line()).reversed()));
        }
        Collections.reverse(edges);
        List<Notch> notches = piece.notches().stream()
                .map(n -> new Notch(
                        n.name(),
                        n.edge(),
                        piece.edge(n.edge()).length() - n.along(),
                        n.at().mirrored(),
                        n.outward().mirrored(),
                        n.mark()))
                .toList();
        List<Mark> marks = piece.marks().stream()
                .map(m -> new Mark(m.name(), m.kind(), mirrored(m.line())))
                .toList();
        Grain grain =
                new Grain(piece.grain().from().mirrored(), piece.grain().to().mirrored());
        List<Point> cut = new ArrayList<>();
        piece.cutLine().points().forEach(p -> cut.add(p.mirrored()));
        Collections.reverse(cut);
        return new Piece(
                piece.name(),
                piece.cut(),
                piece.mirrored(),
                piece.onFold(),
                edges,
                grain,
                notches,
                marks,
                new Polygon(cut));
    }

    private static Path mirrored(Path path) {
        return new Path(path.points().stream().map(Point::mirrored).toList());
    }
}
