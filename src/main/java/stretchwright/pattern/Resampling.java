package stretchwright.pattern;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * Lines that mean the same in several sizes, carried by points at the same shares of their lengths.
 *
 * <p>In: one line per size. Out: shares from 0 to 1, and the lines through the points there. Promise: no line lies further
 * than {@link #TOLERANCE} from its original, in no size. Shares are halved where any size needs it, so that every size has
 * the points that any of them needs.
 */
final class Resampling {
    /** Leaves room for the rounding to the grid under the 0.05 mm that is promised, mm. */
    static final double TOLERANCE = 0.04;

    /** 2^14 parts of a leg of 1.2 m are shorter than 0.1 mm. */
    private static final int DEEPEST = 14;

    private Resampling() {}

    static List<Double> shares(List<Path> lines) {
        List<Measured> measured = lines.stream().map(Measured::new).toList();
        List<Double> shares = new ArrayList<>();
        shares.add(0.0);
        halve(measured, 0, 1, 0, shares);
        return List.copyOf(shares);
    }

    private static void halve(List<Measured> lines, double from, double to, int depth, List<Double> shares) {
        if (depth < DEEPEST && lines.stream().anyMatch(l -> l.off(from, to) > TOLERANCE)) {
            double middle = (from + to) / 2;
            halve(lines, from, middle, depth + 1, shares);
            halve(lines, middle, to, depth + 1, shares);
        } else {
            shares.add(to);
        }
    }

    static Path through(Path line, List<Double> shares) {
        double length = line.length();
        return new Path(shares.stream().map(s -> line.at(s * length).onGrid()).toList());
    }

    /** The part of a line between two distances from its start. */
    static Path part(Path line, double from, double to) {
        List<Point> points = new ArrayList<>();
        points.add(line.at(from));
        double along = 0;
        List<Point> all = line.points();
        for (int i = 1; i < all.size(); i++) {
            along += all.get(i - 1).distance(all.get(i));
            if (along > from && along < to) {
                points.add(all.get(i));
            }
        }
        points.add(line.at(to));
        return new Path(points);
    }

    /** A line with the distance of each of its points from the start. */
    private static final class Measured {
        private final Path line;
        private final double[] along;

        Measured(Path line) {
            this.line = line;
            List<Point> p = line.points();
            along = new double[p.size()];
            for (int i = 1; i < along.length; i++) {
                along[i] = along[i - 1] + p.get(i - 1).distance(p.get(i));
            }
        }

        /** How far the chord between two shares lies from the corners it cuts. */
        double off(double from, double to) {
            double length = along[along.length - 1];
            double a = from * length;
            double b = to * length;
            Point start = line.at(a);
            Point end = line.at(b);
            double worst = 0;
            for (int i = 0; i < along.length; i++) {
                if (along[i] > a && along[i] < b) {
                    worst = Math.max(worst, distance(line.points().get(i), start, end));
                }
            }
            return worst;
        }
    }

    private static double distance(Point p, Point a, Point b) {
        Point way = b.minus(a);
        double square = way.dot(way);
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(way) / square));
        return p.distance(a.towards(b, share));
    }
}
