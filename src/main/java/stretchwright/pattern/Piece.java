package stretchwright.pattern;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Said;

/**
 * One piece of the pattern. The flat axes: x across, y up along the grain.
 *
 * @param cut how many are cut in all
 * @param mirrored half of them are cut mirrored: a left and a right
 * @param onFold given as the half piece, its fold edge on x = 0
 * @param edges the sew line, counter-clockwise, each edge starting where the one before ends
 * @param cutLine the sew line plus the allowances
 */
public record Piece(
        PieceName name,
        int cut,
        boolean mirrored,
        boolean onFold,
        List<Edge> edges,
        Grain grain,
        List<Notch> notches,
        List<Mark> marks,
        Polygon cutLine) {

    public Piece {
        edges = List.copyOf(edges);
        notches = List.copyOf(notches);
        marks = List.copyOf(marks);
        if (cut < 1 || (mirrored && cut % 2 != 0)) {
            throw new IllegalArgumentException(name + ": cut " + cut + (mirrored ? " mirrored" : "") + " cannot be");
        }
        for (int i = 0; i < edges.size(); i++) {
            Point end = edges.get(i).line().end();
            Point start = edges.get((i + 1) % edges.size()).line().start();
            if (!end.equals(start)) {
                throw new IllegalArgumentException(
                        name + ": edge " + edges.get(i).name() + " ends at " + end + ", the next starts at " + start);
            }
        }
    }

    /** A piece whose cut line is made from its edges and their allowances. */
    public static Piece of(
            PieceName name,
            int cut,
            boolean mirrored,
            boolean onFold,
            List<Edge> edges,
            Grain grain,
            List<Notch> notches,
            List<Mark> marks) {
        return new Piece(name, cut, mirrored, onFold, edges, grain, notches, marks, CutLine.around(edges));
    }

    /**
     * The same piece cut along another outline than its own sew line: where a dart is folded and not cut out, its mouth
     * is bridged.
     */
    public Piece cutAround(List<Edge> outline) {
        return new Piece(name, cut, mirrored, onFold, edges, grain, notches, marks, CutLine.around(outline));
    }

    /** How often it is cut: "cut 1 + 1 mirrored", "cut 1 on the fold". */
    public Said timesCut() {
        if (onFold) {
            return Tell.said("cut.on-fold", Part.count(cut));
        }
        return mirrored
                ? Tell.said("cut.mirrored", Part.count(cut / 2), Part.count(cut / 2))
                : Tell.said("cut.plain", Part.count(cut));
    }

    /** The same piece with other notches and marks. */
    public Piece with(List<Notch> otherNotches, List<Mark> otherMarks) {
        return new Piece(name, cut, mirrored, onFold, edges, grain, otherNotches, otherMarks, cutLine);
    }

    public Piece named(PieceName other) {
        return new Piece(other, cut, mirrored, onFold, edges, grain, notches, marks, cutLine);
    }

    public Edge edge(EdgeName asked) {
        return edges.stream()
                .filter(e -> e.name() == asked)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no edge " + asked));
    }

    public boolean has(EdgeName asked) {
        return edges.stream().anyMatch(e -> e.name() == asked);
    }

    public Polygon sewLine() {
        List<Point> points = new ArrayList<>();
        for (Edge edge : edges) {
            List<Point> line = edge.line().points();
            points.addAll(line.subList(0, line.size() - 1));
        }
        return new Polygon(points);
    }

    /** Area of the cloth that one such piece takes, in mm2; a piece on the fold counts both halves. */
    public double clothArea() {
        return cutLine.area() * (onFold ? 2 : 1);
    }
}
