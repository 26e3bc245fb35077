package stretchwright.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Corners;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * Where lines of lettering go on a piece: the largest that lies inside, clear of what is drawn there, level or upright.
 *
 * @param start foot of the first line's first letter
 * @param size height of the letters, mm
 * @param degrees 0, or 90 for lettering that runs up
 */
record Label(Point start, double size, double degrees) {
    /** From one line to the next, in heights. */
    static final double LEADING = 1.6;

    /**
     * Letters to choose from.
     *
     * @param pitch width kept for each, in heights
     * @param sizes heights, mm, the largest first
     */
    record Letters(double pitch, List<Double> sizes) {
        Letters {
            sizes = List.copyOf(sizes);
        }
    }

    /** For a true-scale drawing. Stroke letters are seldom wider than high, whoever draws them. */
    static final Letters WRITING = new Letters(1, List.of(8.0, 6.0, 5.0, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.2, 1.0, 0.7));

    private static final int STEPS = 16;
    /** Both ends so far beyond one side of a box, mm: the stretch lies beside it, whatever the rounding. */
    private static final double BESIDE = 1e-6;

    /** Foot of a line, counted from 0. */
    Point line(int number) {
        return start.plus(new Point(0, -number * LEADING * size).turned(degrees));
    }

    static Label on(Polygon inside, List<List<Point>> drawn, List<String> words, Letters letters) {
        int longest = words.stream().mapToInt(String::length).max().orElse(1);
        Corners outline = Corners.of(inside.points());
        List<Corners> lines = drawn.stream().map(Corners::of).toList();
        for (double size : letters.sizes()) {
            double wide = longest * letters.pitch() * size;
            double high = words.size() * LEADING * size;
            for (double degrees : new double[] {0, 90}) {
                double w = degrees == 0 ? wide : high;
                double h = degrees == 0 ? high : wide;
                for (Point centre : centres(inside.box(), w, h)) {
                    Box box = new Box(centre.x() - w / 2, centre.y() - h / 2, centre.x() + w / 2, centre.y() + h / 2);
                    if (fits(box, outline, lines)) {
                        return new Label(first(box, size, degrees), size, degrees);
                    }
                }
            }
        }
        return squeezed(inside.box(), longest * letters.pitch(), words.size());
    }

    /** A piece too small for its words: they are as small as it takes, and may cross a line. */
    private static Label squeezed(Box box, double longest, int lines) {
        boolean up = box.height() > box.width();
        double along = up ? box.height() : box.width();
        double aside = up ? box.width() : box.height();
        double size = Math.max(0.3, Math.min(0.8 * along / longest, 0.8 * aside / (lines * LEADING)));
        double w = up ? lines * LEADING * size : longest * size;
        double h = up ? longest * size : lines * LEADING * size;
        Point c = box.centre();
        Box at = new Box(c.x() - w / 2, c.y() - h / 2, c.x() + w / 2, c.y() + h / 2);
        return new Label(first(at, size, up ? 90 : 0), size, up ? 90 : 0);
    }

    private static Point first(Box box, double size, double degrees) {
        return degrees == 0
                ? new Point(box.minX(), box.maxY() - 1.2 * size)
                : new Point(box.minX() + 1.2 * size, box.minY());
    }

    /** Places to try, from the middle outwards. */
    private static List<Point> centres(Box room, double w, double h) {
        double freeX = room.width() - w;
        double freeY = room.height() - h;
        List<Point> out = new ArrayList<>();
        if (freeX <= 0 || freeY <= 0) {
            return out;
        }
        for (int i = 0; i <= STEPS; i++) {
            for (int j = 0; j <= STEPS; j++) {
                out.add(new Point(room.minX() + w / 2 + freeX * i / STEPS, room.minY() + h / 2 + freeY * j / STEPS));
            }
        }
        out.sort(Comparator.comparingDouble((Point p) -> p.distance(room.centre()))
                .thenComparingDouble(Point::x)
                .thenComparingDouble(Point::y));
        return out;
    }

    private static boolean fits(Box box, Corners inside, List<Corners> drawn) {
        if (!inside.contains(box.minX(), box.minY())
                || !inside.contains(box.maxX(), box.minY())
                || !inside.contains(box.maxX(), box.maxY())
                || !inside.contains(box.minX(), box.maxY())) {
            return false;
        }
        int last = inside.count() - 1;
        if (!clear(box, inside) || crosses(box, inside.x(last), inside.y(last), inside.x(0), inside.y(0))) {
            return false;
        }
        for (Corners line : drawn) {
            if (!clear(box, line)) {
                return false;
            }
        }
        return true;
    }

    private static boolean clear(Box box, Corners line) {
        for (int i = 1; i < line.count(); i++) {
            if (crosses(box, line.x(i - 1), line.y(i - 1), line.x(i), line.y(i))) {
                return false;
            }
        }
        return true;
    }

    /** Whether any of a stretch lies in the box: it is cut down side by side (Liang and Barsky). */
    private static boolean crosses(Box box, double ax, double ay, double bx, double by) {
        double[] from = {ax - box.minX(), box.maxX() - ax, ay - box.minY(), box.maxY() - ay};
        double[] to = {bx - box.minX(), box.maxX() - bx, by - box.minY(), box.maxY() - by};
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < 4; i++) {
            double step = to[i] - from[i];
            if (step == 0 && from[i] < 0 || from[i] < -BESIDE && to[i] < -BESIDE) {
                return false;
            }
            if (step > 0) {
                enter = Math.max(enter, -from[i] / step);
            } else if (step < 0) {
                leave = Math.min(leave, -from[i] / step);
            }
        }
        return enter <= leave;
    }
}
