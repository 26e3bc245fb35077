package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** Second opinion: the exact overlap test at every whole position. */
class BlockedTest {
    @Test
    void blocksExactlyTheOverlappingPositions() {
        int blocked = 0;
        for (int seed = 0; seed < 400; seed++) {
            RandomStream random = new RandomStream(seed);
            Shape lying = Outlines.star(random, 3 + random.below(14), 20);
            Shape moving = Outlines.star(random, 3 + random.below(14), 20);
            long lyingX = random.below(21) - 10;
            long lyingY = random.below(21) - 10;
            long x = random.below(61) - 30;
            Blocked along = new Blocked();
            along.addPair(lying.columns, moving.columns, x - lyingX, lyingY);
            for (long y = -60; y <= 60; y++) {
                boolean overlaps = overlaps(lying, lyingX, lyingY, moving, x, y);
                assertThat(along.firstFree(y, Beat.FREE) != y)
                        .as("seed %d, y %d", seed, y)
                        .isEqualTo(overlaps);
                blocked += overlaps ? 1 : 0;
            }
        }
        assertThat(blocked).isGreaterThan(3000);
    }

    @Test
    void worksAcrossAsItWorksAlong() {
        for (int seed = 0; seed < 200; seed++) {
            RandomStream random = new RandomStream(seed);
            Shape lying = Outlines.star(random, 3 + random.below(14), 20);
            Shape moving = Outlines.star(random, 3 + random.below(14), 20);
            long y = random.below(61) - 30;
            Blocked across = new Blocked();
            across.addPair(lying.rows, moving.rows, y, 5);
            for (long x = -60; x <= 60; x++) {
                assertThat(across.firstFree(x, Beat.FREE) != x)
                        .as("seed %d, x %d", seed, x)
                        .isEqualTo(overlaps(lying, 5, 0, moving, x, y));
            }
        }
    }

    /** At the coordinates of a garment, far from the small grid above: free where it says, not one unit lower. */
    @Test
    void isExactAtTheSizeOfAGarment() {
        for (int seed = 0; seed < 60; seed++) {
            RandomStream random = new RandomStream(seed);
            Shape lying = Outlines.star(random, 80, 60_000);
            Shape moving = Outlines.star(random, 80, 60_000);
            long x = random.below(160_000) - 80_000;
            Blocked along = new Blocked();
            along.addPair(lying.columns, moving.columns, x, 0);
            long y = along.firstFree(0, Beat.FREE);
            assertThat(overlaps(lying, 0, 0, moving, x, y)).as("seed %d", seed).isFalse();
            if (y > 0) {
                assertThat(overlaps(lying, 0, 0, moving, x, y - 1))
                        .as("seed %d", seed)
                        .isTrue();
            }
        }
    }

    private static boolean overlaps(Shape lying, long lx, long ly, Shape moving, long x, long y) {
        return Overlap.between(
                Outlines.moved(lying.x, lx),
                Outlines.moved(lying.y, ly),
                Outlines.moved(moving.x, x),
                Outlines.moved(moving.y, y));
    }
}
