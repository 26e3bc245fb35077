package stretchwright.lay;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * Large rectangles between outlines. The cloth is cut into cells of 5 mm; a cell is free if no outline enters it and its
 * middle lies in none. The largest rectangle of free cells (the histogram method) is then pushed outwards on each
 * side until it touches, exactly: distances in whole units of 0.01 mm, rounded inwards. Then the next, apart from it.
 */
final class FreeRectangles {
    private static final int CELL = 500;

    /** Whole units: x1, y1, x2, y2. */
    private record Rect(long x1, long y1, long x2, long y2) {
        long area() {
            return (x2 - x1) * (y2 - y1);
        }

        Rect flipped() {
            return new Rect(y1, x1, y2, x2);
        }
    }

    private final long width;
    private final long length;
    private final int columns;
    private final int rows;
    private final boolean[][] taken;
    private final List<long[]> edges = new ArrayList<>();

    FreeRectangles(double width, double length, List<Polygon> outlines) {
        this.width = Grid.units(width);
        this.length = Grid.units(length);
        columns = (int) (this.width / CELL);
        rows = (int) (this.length / CELL);
        taken = new boolean[rows][columns];
        for (Polygon outline : outlines) {
            List<long[]> own = edges(outline.points());
            own.forEach(this::enter);
            fill(own);
            edges.addAll(own);
        }
    }

    private static List<long[]> edges(List<Point> points) {
        List<long[]> out = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            out.add(new long[] {Grid.units(a.x()), Grid.units(a.y()), Grid.units(b.x()), Grid.units(b.y())});
        }
        return out;
    }

    /** Takes every cell whose inside the edge passes. */
    private void enter(long[] e) {
        long low = Math.min(e[1], e[3]);
        long high = Math.max(e[1], e[3]);
        for (int r = (int) Math.max(0, low / CELL); r < rows && (long) r * CELL < high; r++) {
            if (reaches(e, (long) r * CELL, (long) (r + 1) * CELL)) {
                long left = bound(e, (long) r * CELL, (long) (r + 1) * CELL, false);
                long right = bound(e, (long) r * CELL, (long) (r + 1) * CELL, true);
                take(r, Math.floorDiv(left, (long) CELL), Math.floorDiv(right - 1, (long) CELL));
            }
        }
        if (low == high && low > 0 && low % CELL != 0 && low / CELL < rows) {
            long left = Math.min(e[0], e[2]);
            long right = Math.max(e[0], e[2]);
            take((int) (low / CELL), Math.floorDiv(left, (long) CELL), Math.floorDiv(right - 1, (long) CELL));
        }
    }

    private void take(int row, long first, long last) {
        for (long c = Math.max(0, first); c <= last && c < columns; c++) {
            taken[row][(int) c] = true;
        }
    }

    /** Takes the cells whose middle lies inside the outline. */
    private void fill(List<long[]> outline) {
        for (int r = 0; r < rows; r++) {
            double y = (r + 0.5) * CELL + 0.25;
            List<Double> crossings = new ArrayList<>();
            for (long[] e : outline) {
                if ((e[1] > y) != (e[3] > y)) {
                    crossings.add(e[0] + (e[2] - e[0]) * (y - e[1]) / (e[3] - e[1]));
                }
            }
            crossings.sort(Comparator.naturalOrder());
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                long first = (long) Math.ceil(crossings.get(i) / CELL - 0.5);
                long last = (long) Math.floor(crossings.get(i + 1) / CELL - 0.5);
                take(r, first, last);
            }
        }
    }

    /** At most so many, none with a side below the least (mm), largest first. */
    List<Box> largest(double least, int most) {
        long side = Grid.units(least);
        List<Rect> out = new ArrayList<>();
        while (out.size() < most) {
            Rect found = pushed(cells((int) (side / CELL)));
            if (found.x2 - found.x1 < side || found.y2 - found.y1 < side) {
                break;
            }
            out.add(found);
            Polygon box = new Polygon(List.of(
                    at(found.x1, found.y1), at(found.x2, found.y1), at(found.x2, found.y2), at(found.x1, found.y2)));
            List<long[]> own = edges(box.points());
            own.forEach(this::enter);
            fill(own);
            edges.addAll(own);
        }
        out.sort(Comparator.comparingLong(Rect::area).reversed());
        return out.stream()
                .map(r -> new Box(Grid.mm(r.x1), Grid.mm(r.y1), Grid.mm(r.x2), Grid.mm(r.y2)))
                .toList();
    }

    private static Point at(long x, long y) {
        return new Point(Grid.mm(x), Grid.mm(y));
    }

    /** The largest rectangle of free cells with no side under so many cells; an empty one where there is none. */
    private Rect cells(int least) {
        Rect best = new Rect(0, 0, 0, 0);
        int[] high = new int[columns + 1];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                high[c] = taken[r][c] ? 0 : high[c] + 1;
            }
            Deque<Integer> rising = new ArrayDeque<>();
            for (int c = 0; c <= columns; c++) {
                while (!rising.isEmpty() && high[rising.element()] >= high[c]) {
                    int tall = high[rising.pop()];
                    int left = rising.isEmpty() ? 0 : rising.element() + 1;
                    Rect here = new Rect(
                            (long) left * CELL, (long) (r + 1 - tall) * CELL, (long) c * CELL, (long) (r + 1) * CELL);
                    if (tall >= least && c - left >= least && here.area() > best.area()) {
                        best = here;
                    }
                }
                rising.push(c);
            }
        }
        return best;
    }

    private Rect pushed(Rect r) {
        if (r.area() == 0) {
            return r;
        }
        List<long[]> flipped =
                edges.stream().map(e -> new long[] {e[1], e[0], e[3], e[2]}).toList();
        Rect wide = sideways(r, edges, width);
        Rect tall = sideways(wide.flipped(), flipped, length).flipped();
        return sideways(tall, edges, width);
    }

    /** Pushed left and right until an edge that crosses its rows, or the end of the cloth, is touched. */
    private static Rect sideways(Rect r, List<long[]> edges, long end) {
        long left = 0;
        long right = end;
        for (long[] e : edges) {
            if (!reaches(e, r.y1, r.y2)) {
                continue;
            }
            // the rectangle is free, so what crosses its rows lies wholly on one side of it
            long low = bound(e, r.y1, r.y2, false);
            long high = bound(e, r.y1, r.y2, true);
            if (low + high <= r.x1 + r.x2) {
                left = Math.max(left, high);
            } else {
                right = Math.min(right, low);
            }
        }
        return new Rect(Math.min(left, r.x1), r.y1, Math.max(right, r.x2), r.y2);
    }

    /** Whether some of the edge lies between the heights, not only on them. */
    private static boolean reaches(long[] e, long low, long high) {
        return Math.max(e[1], e[3]) > low && Math.min(e[1], e[3]) < high;
    }

    /** The farthest x of the edge between the heights: to the right rounded up, to the left rounded down. */
    private static long bound(long[] e, long low, long high, boolean right) {
        long from = at(e, Math.max(low, Math.min(e[1], e[3])), right);
        long to = at(e, Math.min(high, Math.max(e[1], e[3])), right);
        if (e[1] == e[3]) {
            return right ? Math.max(e[0], e[2]) : Math.min(e[0], e[2]);
        }
        return right ? Math.max(from, to) : Math.min(from, to);
    }

    private static long at(long[] e, long y, boolean up) {
        if (e[1] == e[3]) {
            return e[0];
        }
        long run = (e[2] - e[0]) * (y - e[1]);
        long rise = e[3] - e[1];
        return e[0] + (up ? -Math.floorDiv(-run, rise) : Math.floorDiv(run, rise));
    }
}
