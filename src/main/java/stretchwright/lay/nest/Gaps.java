package stretchwright.lay.nest;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import stretchwright.ground.Polygon;

/** How near outlines come to each other, by the geometry library: a second opinion on the search's own outlines. */
public final class Gaps {
    /** Rounding of both to the grid, mm. */
    private static final double ROUNDING = 0.015;

    private Gaps() {}

    public static Geometry geometry(Polygon polygon) {
        int n = polygon.points().size();
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            ring[i] = new Coordinate(
                    polygon.points().get(i % n).x(), polygon.points().get(i % n).y());
        }
        return new GeometryFactory().createPolygon(ring);
    }

    public static boolean nearer(Polygon one, Polygon other, double gap) {
        boolean apart = one.box().minX() - other.box().maxX() >= gap
                || other.box().minX() - one.box().maxX() >= gap
                || one.box().minY() - other.box().maxY() >= gap
                || other.box().minY() - one.box().maxY() >= gap;
        return !apart && DistanceOp.distance(geometry(one), geometry(other)) < gap - ROUNDING;
    }
}
