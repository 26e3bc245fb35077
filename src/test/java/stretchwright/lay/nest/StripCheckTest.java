package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class StripCheckTest {
    private static final Turned SQUARE = new Turned(0, new long[] {0, 10, 10, 0}, new long[] {0, 0, 10, 10});

    private static void check(long width, long length, int demand, long[]... places) {
        List<StripCheck.Placed> placed = new ArrayList<>();
        for (long[] place : places) {
            placed.add(new StripCheck.Placed(0, SQUARE, place[0], place[1]));
        }
        StripCheck.mustHold(placed, new int[] {demand}, width, length);
    }

    @Test
    void touchingHoldsAndAUnitLessDoesNot() {
        check(20, 20, 3, new long[] {0, 0}, new long[] {10, 0}, new long[] {5, 10});
        assertThatThrownBy(() -> check(20, 20, 3, new long[] {0, 0}, new long[] {10, 0}, new long[] {5, 9}))
                .hasMessageContaining("two pieces overlap");
        assertThatThrownBy(() -> check(20, 20, 2, new long[] {3, 4}, new long[] {3, 4}))
                .hasMessageContaining("two pieces overlap");
    }

    @Test
    void beyondTheStripOrTooFewDoesNotHold() {
        assertThatThrownBy(() -> check(19, 10, 1, new long[] {10, 0})).hasMessageContaining("beyond the strip");
        assertThatThrownBy(() -> check(20, 10, 1, new long[] {10, 1})).hasMessageContaining("beyond the strip");
        assertThatThrownBy(() -> check(20, 10, 1, new long[] {-1, 0})).hasMessageContaining("beyond the strip");
        assertThatThrownBy(() -> check(20, 10, 2, new long[] {0, 0})).hasMessageContaining("a demand is not met");
    }

    /** Far along a strip as at its beginning: the whole numbers of the test stay small. */
    @Test
    void aLongStripIsCheckedAsWell() {
        long far = 1L << 40;
        check(20, far + 20, 2, new long[] {0, far}, new long[] {5, far + 10});
        assertThatThrownBy(() -> check(20, far + 20, 2, new long[] {0, far}, new long[] {5, far + 9}))
                .hasMessageContaining("two pieces overlap");
    }

    /** Second opinion: all pairs by the area that JTS finds shared. */
    @Test
    void findsAnOverlapExactlyWhereAllPairsTellOne() {
        RandomStream random = RandomStream.of(5, "strip check");
        int held = 0;
        for (int run = 0; run < 300; run++) {
            List<Shape> shapes = new ArrayList<>();
            List<StripCheck.Placed> placed = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                Shape shape = Outlines.star(random, 3 + random.below(6), 12);
                shapes.add(shape);
                placed.add(new StripCheck.Placed(
                        0, new Turned(0, shape.x, shape.y), 20 + random.below(60), 20 + random.below(60)));
            }
            boolean apart = IntStream.range(0, 6)
                    .allMatch(i -> IntStream.range(0, i).allMatch(j -> shared(shapes, placed, i, j) < 1e-9));
            held += apart ? 1 : 0;
            assertThat(holds(placed)).isEqualTo(apart);
        }
        assertThat(held).isBetween(20, 280);
    }

    private static double shared(List<Shape> shapes, List<StripCheck.Placed> placed, int i, int j) {
        StripCheck.Placed a = placed.get(i);
        StripCheck.Placed b = placed.get(j);
        return Outlines.sharedArea(
                Outlines.moved(shapes.get(i).x, a.x()),
                Outlines.moved(shapes.get(i).y, a.y()),
                Outlines.moved(shapes.get(j).x, b.x()),
                Outlines.moved(shapes.get(j).y, b.y()));
    }

    private static boolean holds(List<StripCheck.Placed> placed) {
        try {
            StripCheck.mustHold(placed, new int[] {placed.size()}, 100, 100);
            return true;
        } catch (IllegalStateException e) {
            return false;
        }
    }
}
