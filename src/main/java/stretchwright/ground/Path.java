package stretchwright.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** An open line through two or more points, in mm; curves are carried as their chords. */
public record Path(List<Point> points) {
    public Path {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a path needs two points, not " + points.size());
        }
    }

    public static Path of(Point... points) {
        return new Path(List.of(points));
    }

    public Point start() {
        return points.get(0);
    }

    public Point end() {
        return points.get(points.size() - 1);
    }

    public double length() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distance(points.get(i));
        }
        return sum;
    }

    /** The point at a distance along the path from its start; distances beyond either end give that end. */
    public Point at(double along) {
        double left = along;
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            double step = from.distance(to);
            if (left <= step && step > 0) {
                return from.towards(to, Math.max(0, left) / step);
            }
            left -= step;
        }
        return end();
    }

    /** The direction of travel at a distance along the path, as a unit vector. */
    public Point directionAt(double along) {
        double left = along;
        Point direction = null;
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            double step = from.distance(to);
            if (step == 0) {
                continue;
            }
            direction = to.minus(from).times(1 / step);
            if (left <= step) {
                return direction;
            }
            left -= step;
        }
        if (direction == null) {
            throw new IllegalStateException("a path of no length has no direction: " + points);
        }
        return direction;
    }

    /** The distance along the path to the first place where it crosses the height y; -1 where it never does. */
    public double alongAtHeight(double y) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            double step = from.distance(to);
            if (from.y() == y) {
                return sum;
            }
            if ((from.y() - y) * (to.y() - y) <= 0) {
                return sum + step * (y - from.y()) / (to.y() - from.y());
            }
            sum += step;
        }
        return -1;
    }

    public Path reversed() {
        List<Point> turned = new ArrayList<>(points);
        Collections.reverse(turned);
        return new Path(turned);
    }

    public Path onGrid() {
        return new Path(points.stream().map(Point::onGrid).toList());
    }
}
