package stretchwright.ground;

import java.util.List;

/** An upright rectangle, in mm. */
public record Box(double minX, double minY, double maxX, double maxY) {
    public Box {
        if (!(minX <= maxX && minY <= maxY)) {
            throw new IllegalArgumentException(
                    "box from (" + minX + ", " + minY + ") to (" + maxX + ", " + maxY + ") is turned inside out");
        }
    }

    /** The smallest box round the points; there must be at least one. */
    public static Box around(List<Point> points) {
        Point first = points.get(0);
        double minX = first.x();
        double minY = first.y();
        double maxX = minX;
        double maxY = minY;
        for (Point p : points) {
            minX = Math.min(minX, p.x());
            minY = Math.min(minY, p.y());
            maxX = Math.max(maxX, p.x());
            maxY = Math.max(maxY, p.y());
        }
        return new Box(minX, minY, maxX, maxY);
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** Counter-clockwise from the lower left. */
    public List<Point> corners() {
        return List.of(new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY));
    }

    /** Grown by the margin on all four sides. */
    public Box grown(double margin) {
        return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
    }

    public boolean meets(Box other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }
}
