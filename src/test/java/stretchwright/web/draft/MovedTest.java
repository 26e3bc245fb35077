package stretchwright.web.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

/** Which points of an outline lie away from another one, against the distance to every side of it. */
class MovedTest {
    private static final double SAME = 1.5;

    @Test
    void whatIsInkedAsMovedLiesAwayAndNothingElseDoes() {
        RandomStream stream = new RandomStream(24);
        for (int i = 0; i < 200; i++) {
            List<Point> before = ring(stream, 0);
            List<Point> now = new ArrayList<>();
            double by = stream.between(0, 6);
            before.forEach(p -> now.add(p.x() > 40 ? p.plus(new Point(by, 0)) : p));
            Set<Point> run = new HashSet<>();
            Moved.runs(new Polygon(before), new Polygon(now)).forEach(r -> run.addAll(r));
            for (Point p : before) {
                if (plain(p, now) > SAME) {
                    assertThat(run).contains(p);
                }
            }
            // a run has one point more at either end
            long away = before.stream().filter(p -> plain(p, now) > SAME).count();
            long runs = Moved.runs(new Polygon(before), new Polygon(now)).size();
            assertThat((long) run.size()).isLessThanOrEqualTo(away + 2 * runs);
        }
    }

    @Test
    void anOutlineThatDidNotMoveHasNoRun() {
        List<Point> ring = ring(new RandomStream(7), 0);
        assertThat(Moved.runs(new Polygon(ring), new Polygon(ring))).isEmpty();
        List<Point> far = ring(new RandomStream(7), 500);
        assertThat(Moved.runs(new Polygon(ring), new Polygon(far)))
                .singleElement()
                .satisfies(run -> assertThat(run).hasSize(ring.size() + 1));
    }

    private static List<Point> ring(RandomStream stream, double right) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double turn = 2 * Math.PI * i / 60;
            double out = stream.between(90, 110);
            points.add(new Point(right + out * Math.cos(turn), out * Math.sin(turn)));
        }
        return points;
    }

    private static double plain(Point p, List<Point> line) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < line.size(); i++) {
            Point a = line.get(i);
            Point d = line.get((i + 1) % line.size()).minus(a);
            double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
            least = Math.min(least, p.distance(a.plus(d.times(t))));
        }
        return least;
    }
}
