package stretchwright.lay.nest;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import stretchwright.ground.RandomStream;

/** Random outlines in whole units, and JTS as the second opinion on them. Invented. */
public final class Outlines {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Outlines() {}

    /** A star-shaped outline round the origin on a coarse grid, so that touching and coinciding edges are common. */
    static Shape star(RandomStream random, int corners, int reach) {
        while (true) {
            long[] x = new long[corners];
            long[] y = new long[corners];
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * (i + random.between(0, 0.9)) / corners;
                double radius = random.between(0.25, 1) * reach;
                x[i] = Math.round(radius * Math.cos(angle));
                y[i] = Math.round(radius * Math.sin(angle));
            }
            if (polygon(x, y, 0, 0).isSimple()
                    && polygon(x, y, 0, 0).isValid()
                    && polygon(x, y, 0, 0).getArea() > 1) {
                return Shape.of(x, y);
            }
        }
    }

    public static Polygon polygon(long[] x, long[] y, long dx, long dy) {
        Coordinate[] ring = new Coordinate[x.length + 1];
        for (int i = 0; i <= x.length; i++) {
            ring[i] = new Coordinate(x[i % x.length] + dx, y[i % x.length] + dy);
        }
        return FACTORY.createPolygon(ring);
    }

    public static double sharedArea(long[] ax, long[] ay, long[] bx, long[] by) {
        return polygon(ax, ay, 0, 0).intersection(polygon(bx, by, 0, 0)).getArea();
    }

    public static long[] moved(long[] values, long by) {
        return java.util.Arrays.stream(values).map(v -> v + by).toArray();
    }
}
