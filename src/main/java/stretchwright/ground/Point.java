package stretchwright.ground;

/** A point or a vector in the plane, in mm; x to the right, y up. */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("point (" + x + ", " + y + ") must be finite");
        }
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** Twice the signed area of the triangle (origin, this, other); positive when other lies to the left. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    public double distance(Point other) {
        return minus(other).norm();
    }

    /** The same direction with length 1; the zero vector has none and is refused. */
    public Point unit() {
        double length = norm();
        if (length == 0) {
            throw new IllegalArgumentException("the zero vector has no direction");
        }
        return times(1 / length);
    }

    /** Turned a quarter to the left (counter-clockwise). */
    public Point left() {
        return new Point(-y, x);
    }

    /** The point a share of the way from here to there: 0 is here, 1 is there. */
    public Point towards(Point there, double share) {
        return new Point(x + (there.x - x) * share, y + (there.y - y) * share);
    }

    /** Mirrored in the y axis. */
    public Point mirrored() {
        return new Point(-x, y);
    }

    /** Turned about the origin, counter-clockwise; quarter turns are exact. */
    public Point turned(double degrees) {
        double quarter = degrees / 90;
        if (quarter == Math.rint(quarter)) {
            return switch (Math.floorMod((long) quarter, 4)) {
                case 0 -> this;
                case 1 -> new Point(-y, x);
                case 2 -> new Point(-x, -y);
                default -> new Point(y, -x);
            };
        }
        double angle = StrictMath.toRadians(degrees);
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return new Point(x * cos - y * sin, x * sin + y * cos);
    }

    /** Moved to the nearest point of the 0.01 mm grid. */
    public Point onGrid() {
        return new Point(Grid.snap(x), Grid.snap(y));
    }
}
