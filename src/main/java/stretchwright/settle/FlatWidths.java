package stretchwright.settle;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;

/** How wide an outline is at a height; its sides are kept in rows, so that only those near the height are looked at. */
final class FlatWidths {
    private static final double ROW = 8;

    private final double foot;
    private final List<List<Side>> rows = new ArrayList<>();

    private record Side(Point from, Point to) {}

    FlatWidths(List<Point> outline) {
        foot = outline.stream().mapToDouble(Point::y).min().orElse(0);
        Point a = outline.get(outline.size() - 1);
        for (Point b : outline) {
            put(new Side(a, b));
            a = b;
        }
    }

    private void put(Side side) {
        int low = row(Math.min(side.from.y(), side.to.y()));
        int high = row(Math.max(side.from.y(), side.to.y()));
        while (rows.size() <= high) {
            rows.add(new ArrayList<>());
        }
        for (int r = low; r <= high; r++) {
            rows.get(r).add(side);
        }
    }

    private int row(double y) {
        return (int) Math.floor((y - foot) / ROW);
    }

    /** Lowest spot. */
    double foot() {
        return foot;
    }

    /** From the first to the last crossing at a height; 0 where there is none. */
    double at(double y) {
        int row = row(y);
        if (row < 0 || row >= rows.size()) {
            return 0;
        }
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Side s : rows.get(row)) {
            Point a = s.from;
            Point b = s.to;
            if ((a.y() > y) != (b.y() > y)) {
                double x = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                low = Math.min(low, x);
                high = Math.max(high, x);
            }
        }
        return Math.max(0, high - low);
    }
}
