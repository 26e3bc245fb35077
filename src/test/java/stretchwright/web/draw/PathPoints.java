package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.Point;

/** Points along a path of moves, lines, curves and arcs, all absolute. */
final class PathPoints {
    private static final Pattern STEP = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final int EACH = 8;

    private PathPoints() {}

    static List<Point> of(String d) {
        List<Point> out = new ArrayList<>();
        Matcher steps = STEP.matcher(d);
        while (steps.find()) {
            List<Double> n = NUMBER.matcher(steps.group(2))
                    .results()
                    .map(r -> Double.valueOf(r.group()))
                    .toList();
            switch (steps.group(1)) {
                case "M", "L" -> {
                    for (int i = 0; i < n.size(); i += 2) {
                        out.add(new Point(n.get(i), n.get(i + 1)));
                    }
                }
                case "C" -> {
                    for (int i = 0; i < n.size(); i += 6) {
                        curve(out, n.subList(i, i + 6));
                    }
                }
                case "A" -> half(out, n);
                case "Z" -> {}
                default -> throw new IllegalArgumentException(steps.group());
            }
        }
        return out;
    }

    private static void curve(List<Point> out, List<Double> n) {
        Smooth.Arc arc = new Smooth.Arc(
                out.get(out.size() - 1),
                new Point(n.get(0), n.get(1)),
                new Point(n.get(2), n.get(3)),
                new Point(n.get(4), n.get(5)));
        for (int i = 1; i <= EACH; i++) {
            out.add(arc.at((double) i / EACH));
        }
    }

    /** Half an ellipse, or nearly a whole circle: as far as it reaches up and down from its ends. */
    private static void half(List<Point> out, List<Double> n) {
        Point from = out.get(out.size() - 1);
        Point to = new Point(n.get(5), n.get(6));
        boolean whole = n.get(3) == 1;
        double way = whole ? 2 * n.get(1) : n.get(4) == 1 ? -n.get(1) : n.get(1);
        out.add(from.towards(to, 0.5).plus(new Point(0, way)));
        out.add(to);
    }
}
