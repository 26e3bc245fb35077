package stretchwright.lay.nest;

import java.util.List;
import java.util.stream.IntStream;
import stretchwright.ground.Point;

/**
 * An item's corners in one rotation, in whole units (x across the strip, y along it), and their box: what laying by
 * boxes needs, at a small share of the cost of a {@link Shape}.
 *
 * <p>The numbers are those of {@link StripScale#part}.
 */
final class Turned {
    final double rotation;
    final long[] x;
    final long[] y;
    final long minX;
    final long minY;
    final long maxX;
    final long maxY;

    Turned(double rotation, long[] x, long[] y) {
        this.rotation = rotation;
        this.x = x;
        this.y = y;
        minX = Outline.least(x);
        minY = Outline.least(y);
        maxX = Outline.greatest(x);
        maxY = Outline.greatest(y);
    }

    static Turned of(StripInstance.Item item, double rotation, StripScale scale) {
        List<Point> points = item.polygon().points();
        long[] x = new long[points.size()];
        long[] y = new long[points.size()];
        for (int i = 0; i < x.length; i++) {
            Point p = points.get(i).turned(rotation);
            x[i] = Math.round(p.y() * scale.factor());
            y[i] = Math.round(p.x() * scale.factor());
        }
        return new Turned(rotation, x, y);
    }

    static Turned of(Part.Variant variant) {
        return new Turned(variant.rotation(), variant.exact().x, variant.exact().y);
    }

    /** Whether the coordinates are small enough for the exact tests, wherever it lies. */
    boolean exact() {
        return Math.max(maxX, maxY) < Shape.LARGEST
                && Math.min(minX, minY) > -Shape.LARGEST
                && Math.max(width(), height()) < Shape.LARGEST;
    }

    /** Whether rounding left no area. */
    boolean flat() {
        List<long[]> corners = IntStream.range(0, x.length)
                .mapToObj(i -> new long[] {x[i], y[i]})
                .toList();
        return Outline.doubleArea(corners) == 0;
    }

    long width() {
        return maxX - minX;
    }

    long height() {
        return maxY - minY;
    }
}
