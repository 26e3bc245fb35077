package stretchwright.print.kit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** The parts of a line that lie in a box (each chord by the parameters at which it enters and leaves). */
public final class Clipping {
    private Clipping() {}

    public static List<List<Point>> inside(List<Point> line, boolean closed, Box box) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        int chords = closed ? line.size() : line.size() - 1;
        for (int i = 0; i < chords; i++) {
            Point from = line.get(i);
            Point to = line.get((i + 1) % line.size());
            double[] part = part(from, to, box);
            if (part.length == 0) {
                continue;
            }
            Point start = from.towards(to, part[0]);
            if (run.isEmpty() || run.get(run.size() - 1).distance(start) > 1e-9) {
                run = new ArrayList<>(List.of(start));
                runs.add(run);
            }
            run.add(from.towards(to, part[1]));
        }
        return runs.stream().filter(r -> r.size() > 1).map(List::copyOf).toList();
    }

    private static double[] part(Point from, Point to, Box box) {
        Point way = to.minus(from);
        double[] slopes = {-way.x(), way.x(), -way.y(), way.y()};
        double[] rooms = {from.x() - box.minX(), box.maxX() - from.x(), from.y() - box.minY(), box.maxY() - from.y()};
        double enters = 0;
        double leaves = 1;
        for (int i = 0; i < 4; i++) {
            if (slopes[i] == 0) {
                if (rooms[i] < 0) {
                    return new double[0];
                }
            } else if (slopes[i] < 0) {
                enters = Math.max(enters, rooms[i] / slopes[i]);
            } else {
                leaves = Math.min(leaves, rooms[i] / slopes[i]);
            }
        }
        return enters > leaves ? new double[0] : new double[] {enters, leaves};
    }
}
