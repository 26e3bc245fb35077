package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** An outline grown on all sides, so that two that touch leave room for the scissors between the pieces. */
public final class Grown {
    /** Corners are drawn on until the edges meet, or cut off this much farther out than the margin. */
    private static final double CORNER = 1.1;
    /** Share of the margin by which the library may simplify the outline; its usual 0.01 would be felt. */
    private static final double SIMPLIFIED = 1e-4;
    /** Rounding to the grid moves a corner by at most 0.0071 mm; two outlines, so twice; on the grid itself. */
    private static final double ROUNDING = 0.02;

    private Grown() {}

    /** By how much outlines are grown for a gap, mm: half of it, and for rounding. */
    public static double margin(double gap) {
        return gap == 0 ? 0 : Grid.snap(gap / 2) + ROUNDING;
    }

    /** @param gap mm; 0 leaves the outline as it is */
    public static Shape by(Polygon outline, double gap) {
        if (gap == 0) {
            return Shape.of(outline);
        }
        return Shape.of(outward(outline, margin(gap)));
    }

    /** @param margin in the units of the outline */
    static Polygon outward(Polygon outline, double margin) {
        BufferParameters edges =
                new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, CORNER);
        edges.setSimplifyFactor(SIMPLIFIED);
        Geometry grown = BufferOp.bufferOp(Gaps.geometry(outline), margin, edges);
        LinearRing shell = ((org.locationtech.jts.geom.Polygon) grown).getExteriorRing();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < shell.getNumPoints() - 1; i++) {
            points.add(new Point(shell.getCoordinateN(i).x, shell.getCoordinateN(i).y));
        }
        return Polygon.either(points);
    }
}
