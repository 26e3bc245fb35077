package stretchwright.settle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;

/** Widths from rows against widths from every side of the outline. */
class FlatWidthsTest {
    @Test
    void rowsGiveWhatAllSidesGive() {
        RandomStream stream = new RandomStream(24);
        for (int i = 0; i < 300; i++) {
            List<Point> outline = outline(stream);
            FlatWidths rows = new FlatWidths(outline);
            for (int k = 0; k < 40; k++) {
                double y = stream.between(-30, 460);
                assertThat(rows.at(y)).isEqualTo(plain(outline, y));
            }
            Point corner = outline.get(outline.size() / 2);
            assertThat(rows.at(corner.y())).as("at a corner").isEqualTo(plain(outline, corner.y()));
        }
    }

    private static List<Point> outline(RandomStream stream) {
        List<Point> points = new ArrayList<>();
        int corners = 3 + (int) stream.between(0, 20);
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            double out = stream.between(20, 200);
            points.add(new Point(out * Math.cos(turn), 200 + out * Math.sin(turn)));
        }
        return points;
    }

    private static double plain(List<Point> line, double y) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = 0; i < line.size(); i++) {
            Point a = line.get((i + line.size() - 1) % line.size());
            Point b = line.get(i);
            if ((a.y() > y) != (b.y() > y)) {
                double x = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                low = Math.min(low, x);
                high = Math.max(high, x);
            }
        }
        return Math.max(0, high - low);
    }
}
