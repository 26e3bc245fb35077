package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

class RowsTest {
    @Test
    void boxesStandApartAndNoHigherThanAllowed() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                double x = random.nextDouble() * 100 - 50;
                double y = random.nextDouble() * 100 - 50;
                boxes.add(new Box(x, y, x + random.nextDouble() * 300, y + random.nextDouble() * 300));
            }
            double most =
                    Math.max(150, boxes.stream().mapToDouble(Box::height).max().orElseThrow());
            List<Point> moves = Rows.moves(boxes, 150, 10);
            List<Box> placed = new ArrayList<>();
            for (int i = 0; i < boxes.size(); i++) {
                Box b = boxes.get(i);
                Point m = moves.get(i);
                placed.add(new Box(b.minX() + m.x(), b.minY() + m.y(), b.maxX() + m.x(), b.maxY() + m.y()));
            }
            for (int i = 0; i < placed.size(); i++) {
                assertThat(placed.get(i).minX()).isGreaterThan(-1e-9);
                assertThat(placed.get(i).minY()).isGreaterThan(-1e-9);
                assertThat(placed.get(i).maxY()).isLessThan(most + 1e-9);
                for (int j = 0; j < i; j++) {
                    assertThat(placed.get(i).grown(9.999).meets(placed.get(j))).isFalse();
                }
            }
        }
    }
}
