package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Box;

class NearTest {
    private static final double WIDTH = 40_000;
    private static final double LENGTH = 65_000;

    @ParameterizedTest
    @ValueSource(ints = {1, 63, 64, 65, 200})
    void everyBoxThatMeetsIsNamedAndNoneThatLiesTwoBandsOff(int parts) {
        Random random = new Random(parts);
        Near near = new Near(parts, WIDTH, LENGTH);
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            boxes.add(box(random));
            put(near, i, boxes.get(i));
        }
        for (int turn = 0; turn < 2000; turn++) {
            int moved = random.nextInt(parts);
            boxes.set(moved, box(random));
            put(near, moved, boxes.get(moved));
            Box asked = box(random);
            List<Integer> named = named(near, parts, asked);
            for (int i = 0; i < parts; i++) {
                if (inside(boxes.get(i), asked)) {
                    assertThat(named).contains(i);
                }
                if (!inside(boxes.get(i), asked.grown(2 * LENGTH / 128))) {
                    assertThat(named).doesNotContain(i);
                }
            }
        }
    }

    private static Box box(Random random) {
        double x = random.nextDouble() * WIDTH;
        double y = random.nextDouble() * LENGTH;
        double w = random.nextDouble() * (WIDTH - x);
        return new Box(x, y, x + w, y + random.nextDouble() * (LENGTH - y));
    }

    private static boolean inside(Box a, Box b) {
        return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
    }

    private static void put(Near near, int i, Box box) {
        near.put(i, box.minX(), box.maxX(), box.minY(), box.maxY());
    }

    private static List<Integer> named(Near near, int parts, Box box) {
        List<Integer> named = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            long bits = near.within(
                    i / Long.SIZE,
                    near.from(box.minX()),
                    near.to(box.maxX()),
                    near.fromAlong(box.minY()),
                    near.toAlong(box.maxY()));
            if ((bits >> i & 1) == 1) {
                named.add(i);
            }
        }
        return named;
    }
}
