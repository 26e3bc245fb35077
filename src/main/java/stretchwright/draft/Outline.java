package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;

/** Questions about an outline given as its edges, and paths cut at a place. */
final class Outline {
    /** A chord shorter than this before a cut would point anywhere on the grid, mm. */
    private static final double SHORTEST = 1;

    private Outline() {}

    /** Everything of a path before a distance along it. */
    static Path before(Path path, double along) {
        List<Point> out = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < path.points().size(); i++) {
            Point p = path.points().get(i);
            sum += i == 0 ? 0 : path.points().get(i - 1).distance(p);
            if (i > 0 && sum >= along - SHORTEST) {
                break;
            }
            out.add(p);
        }
        out.add(path.at(along));
        return new Path(out);
    }

    static Path after(Path path, double along) {
        return before(path.reversed(), path.length() - along).reversed();
    }

    /** Distance along the path to where it first crosses the upright line x; empty where it does not. */
    static Optional<Double> alongAtX(Path path, double x) {
        double sum = 0;
        for (int i = 1; i < path.points().size(); i++) {
            Point a = path.points().get(i - 1);
            Point b = path.points().get(i);
            if ((a.x() - x) * (b.x() - x) <= 0 && a.x() != b.x()) {
                return Optional.of(sum + a.distance(b) * (x - a.x()) / (b.x() - a.x()));
            }
            sum += a.distance(b);
        }
        return Optional.empty();
    }

    /** From the leftmost to the rightmost crossing with a level line; empty where there are none. */
    static Optional<Path> across(List<Edge> edges, double y) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        for (Edge edge : edges) {
            List<Point> p = edge.line().points();
            for (int i = 1; i < p.size(); i++) {
                Point a = p.get(i - 1);
                Point b = p.get(i);
                if ((a.y() - y) * (b.y() - y) <= 0 && a.y() != b.y()) {
                    double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
                    min = Math.min(min, x);
                    max = Math.max(max, x);
                }
            }
        }
        return max - min < 1 ? Optional.empty() : Optional.of(Path.of(new Point(min, y), new Point(max, y)));
    }

    /** The level lines again, as far as this outline reaches. */
    static List<Mark> levels(List<Mark> of, List<Edge> edges) {
        List<Mark> out = new ArrayList<>();
        for (Mark mark : of) {
            if (mark.kind() == Mark.Kind.LEVEL) {
                across(edges, mark.line().start().y())
                        .ifPresent(line -> out.add(new Mark(mark.name(), Mark.Kind.LEVEL, line.onGrid())));
            }
        }
        return out;
    }

    /** A grain line at the same heights, in the middle of this outline. */
    static Grain grain(Grain like, List<Edge> edges) {
        double low = like.from().y();
        double high = like.to().y();
        Path middle = across(edges, (low + high) / 2).orElseThrow();
        double x = (middle.start().x() + middle.end().x()) / 2;
        return new Grain(new Point(x, low).onGrid(), new Point(x, high).onGrid());
    }

    static Edge edge(List<Edge> edges, EdgeName name) {
        return edges.stream().filter(e -> e.name() == name).findFirst().orElseThrow();
    }

    /** A notch where an upright edge crosses a height, if it does so with room at both ends. */
    static void notchAt(NotchName name, double y, Edge edge, double room, List<Notch> out) {
        double along = edge.line().alongAtHeight(y);
        if (along > room && along < edge.length() - room) {
            out.add(notch(name, edge, along, Notch.Mark.SINGLE));
        }
    }

    /** A matching mark on an edge, so far from its start. */
    static Notch notch(NotchName name, Edge edge, double along, Notch.Mark mark) {
        Point outward = edge.line().directionAt(along).left().times(-1);
        return new Notch(name, edge.name(), along, edge.line().at(along), outward, mark);
    }
}
