package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;

/** How drawn curves bend: how often they change hand, and how tightly. */
public final class Smoothness {
    /** A point on the 0.01 mm grid may turn a chord by 0.014 mm over its length. */
    private static final double GRID_NOISE = 0.015;

    /** Bends are read over chords of this length, mm: shorter ones show the grid. */
    private static final double CHORD = 8;

    private Smoothness() {}

    /** The tightest place of a piece's edges, away from its corners. */
    public record Tightest(Optional<EdgeName> edge, double radius) {}

    /** Changes of hand of the bend, above a height. */
    static int changes(Path path, double above) {
        List<Point> p = path.points();
        int changes = 0;
        int last = 0;
        for (int i = 1; i + 1 < p.size(); i++) {
            if (p.get(i).y() < above) {
                continue;
            }
            Point a = p.get(i).minus(p.get(i - 1));
            Point b = p.get(i + 1).minus(p.get(i));
            double noise = GRID_NOISE * (1 / a.norm() + 1 / b.norm());
            double turn = StrictMath.atan2(a.cross(b), a.dot(b));
            int sign = Math.abs(turn) < noise ? 0 : (int) Math.signum(turn);
            if (sign != 0 && last != 0 && sign != last) {
                changes++;
            }
            last = sign == 0 ? last : sign;
        }
        return changes;
    }

    static Tightest tightest(Piece piece) {
        Tightest found = new Tightest(Optional.empty(), Double.POSITIVE_INFINITY);
        for (Edge edge : piece.edges()) {
            double radius = radius(edge.line());
            if (radius < found.radius()) {
                found = new Tightest(Optional.of(edge.name()), radius);
            }
        }
        return found;
    }

    /** The smallest circle through three points a chord apart. */
    private static double radius(Path line) {
        return radius(line, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The same between two heights. */
    static double radius(Path line, double low, double high) {
        double length = line.length();
        double least = Double.POSITIVE_INFINITY;
        for (double at = CHORD; at + CHORD <= length; at += CHORD / 2) {
            Point a = line.at(at - CHORD);
            Point b = line.at(at);
            if (b.y() < low || b.y() > high) {
                continue;
            }
            Point c = line.at(at + CHORD);
            double twiceArea = Math.abs(b.minus(a).cross(c.minus(a)));
            if (twiceArea > 0) {
                least = Math.min(least, a.distance(b) * b.distance(c) * c.distance(a) / (2 * twiceArea));
            }
        }
        return least;
    }
}
