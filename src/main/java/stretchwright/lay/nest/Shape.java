package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * An outline in whole units, counter-clockwise, with its box and its slabs in both directions.
 *
 * <p>Coordinates stay below 2^28, so that every product of the exact tests fits a long, doubled coordinates included.
 */
public final class Shape {
    static final long LARGEST = 1L << 28;

    public final long[] x;
    public final long[] y;
    public final long minX;
    public final long minY;
    public final long maxX;
    public final long maxY;
    /** Slabs of a sweep along x: sections are vertical. */
    public final Slabs columns;
    /** Slabs of a sweep along y: sections are horizontal. */
    public final Slabs rows;

    private Shape(long[] x, long[] y) {
        this.x = x;
        this.y = y;
        minX = Outline.least(x);
        minY = Outline.least(y);
        maxX = Outline.greatest(x);
        maxY = Outline.greatest(y);
        if (minX <= -LARGEST || minY <= -LARGEST || maxX >= LARGEST || maxY >= LARGEST) {
            throw new IllegalArgumentException("an outline reaches beyond " + LARGEST + " units");
        }
        columns = Slabs.of(x, y);
        rows = Slabs.of(y, x);
    }

    /** From whole coordinates in either sense of rotation; repeated corners are dropped. */
    public static Shape of(long[] x, long[] y) {
        List<long[]> corners = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            int before = (i + x.length - 1) % x.length;
            if (x[i] != x[before] || y[i] != y[before]) {
                corners.add(new long[] {x[i], y[i]});
            }
        }
        if (Outline.doubleArea(corners) < 0) {
            Collections.reverse(corners);
        }
        return new Shape(
                corners.stream().mapToLong(c -> c[0]).toArray(),
                corners.stream().mapToLong(c -> c[1]).toArray());
    }

    /** In millimetres. */
    public Polygon polygon() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            points.add(new Point(Grid.mm(x[i]), Grid.mm(y[i])));
        }
        return new Polygon(points);
    }

    /** From millimetres, each corner on the 0.01 mm grid. */
    public static Shape of(Polygon polygon) {
        return of(
                polygon.points().stream().mapToLong(p -> Grid.units(p.x())).toArray(),
                polygon.points().stream().mapToLong(p -> Grid.units(p.y())).toArray());
    }

    /** The outline with fewer corners, each of them an old one and no old one farther off than tolerance. */
    Shape simplified(double tolerance) {
        return Outline.simplified(this, tolerance);
    }

    public int corners() {
        return x.length;
    }

    public double area() {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            twice += (double) (x[i] * y[j] - y[i] * x[j]);
        }
        return twice / 2;
    }

    public long width() {
        return maxX - minX;
    }

    public long height() {
        return maxY - minY;
    }

    /** The half piece on x = 0 and its mirror image as one outline. */
    public static Polygon unfolded(Polygon half) {
        List<Point> points = half.points();
        int n = points.size();
        int start = -1;
        for (int i = 0; i < n; i++) {
            if (points.get(i).x() < 0) {
                throw new IllegalArgumentException("a piece on the fold reaches beyond its fold: " + points.get(i));
            }
            if (points.get(i).x() == 0 && points.get((i + 1) % n).x() > 0) {
                start = i;
            }
        }
        if (start < 0) {
            throw new IllegalArgumentException("a piece on the fold has no corner on its fold");
        }
        List<Point> right = new ArrayList<>();
        right.add(points.get(start));
        int i = start;
        do {
            i = (i + 1) % n;
            right.add(points.get(i));
        } while (points.get(i).x() > 0);
        List<Point> out = new ArrayList<>(right);
        for (int k = right.size() - 2; k > 0; k--) {
            out.add(right.get(k).mirrored());
        }
        return new Polygon(out);
    }
}
