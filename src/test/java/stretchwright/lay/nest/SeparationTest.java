package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** Crowds that can be separated are, exactly; crowds that cannot are left as little overlapped as they were seen. */
class SeparationTest {
    private static final long SIDE = 1000;
    private static final Part SQUARE = square();

    private static Part square() {
        Shape shape = Shape.of(new long[] {0, SIDE, SIDE, 0}, new long[] {0, 0, SIDE, SIDE});
        return new Part(0, List.of(new Part.Variant(0, shape, shape, Beat.FREE)), Across.between(0, 4 * SIDE));
    }

    private static Crowd heap(int squares, long length) {
        Bed bed = Bed.of(Collections.nCopies(squares, SQUARE), Strip.plain(4 * SIDE), 0)
                .orElseThrow();
        long[] x = IntStream.range(0, squares).mapToLong(i -> 37L * i).toArray();
        long[] y = IntStream.range(0, squares).mapToLong(i -> 23L * i).toArray();
        return crowd(bed, length, x, y);
    }

    /** The bed's parts, each where it is said. */
    private static Crowd crowd(Bed bed, long length, long[] x, long[] y) {
        List<Layout.Spot> spots = IntStream.range(0, x.length)
                .mapToObj(i -> new Layout.Spot(
                        bed.parts.get(i), 0, x[i], y[i], y[i] + bed.parts.get(i).height()))
                .toList();
        Crowd crowd = new Crowd(bed, length);
        crowd.start(new Layout(spots, length));
        return crowd;
    }

    private static boolean separate(Crowd crowd, long seed) {
        RandomStream random = RandomStream.of(seed, "separation test");
        return new Separation(crowd, new Mover(crowd, random), random, () -> false).separate(3, 100);
    }

    @Test
    void aHeapWithRoomIsSpreadOutWithoutOverlap() {
        for (long seed = 1; seed <= 20; seed++) {
            Crowd crowd = heap(10, 4 * SIDE);
            assertThat(crowd.overlap()).isPositive();
            assertThat(separate(crowd, seed)).isTrue();
            for (int i = 0; i < crowd.n; i++) {
                for (int j = 0; j < i; j++) {
                    boolean apart =
                            Math.abs(crowd.x[i] - crowd.x[j]) >= SIDE || Math.abs(crowd.y[i] - crowd.y[j]) >= SIDE;
                    assertThat(apart).as("%d and %d, seed %d", i, j, seed).isTrue();
                }
                assertThat(crowd.x[i]).isBetween(0.0, 3.0 * SIDE);
                assertThat(crowd.y[i]).isBetween(0.0, 3.0 * SIDE);
            }
        }
    }

    @Test
    void whatHasNoRoomIsNotCalledSeparatedAndIsNoWorseThanBefore() {
        Crowd crowd = heap(9, 2 * SIDE);
        double before = crowd.overlap();
        assertThat(separate(crowd, 1)).isFalse();
        assertThat(crowd.overlap()).isPositive().isLessThan(before);
    }

    @Test
    void aHaltEndsItAtOnce() {
        Crowd crowd = heap(9, 2 * SIDE);
        RandomStream random = RandomStream.of(1, "separation test");
        long before = crowd.work();
        boolean done = new Separation(crowd, new Mover(crowd, random), random, () -> true).separate(3, 100);
        assertThat(done).isFalse();
        assertThat(crowd.work() - before).isLessThan(10_000);
    }

    /** The same depth counts more between large parts: one of four times the area weighs twice as much. */
    @Test
    void overlapWeighsByTheAreas() {
        Shape large = Shape.of(new long[] {0, 2 * SIDE, 2 * SIDE, 0}, new long[] {0, 0, 2 * SIDE, 2 * SIDE});
        Part big = new Part(1, List.of(new Part.Variant(0, large, large, Beat.FREE)), Across.between(0, 4 * SIDE));
        Bed bed = Bed.of(List.of(SQUARE, SQUARE, big), Strip.plain(4 * SIDE), 0).orElseThrow();
        long into = SIDE - 100;
        double small = crowd(bed, 9 * SIDE, new long[] {0, into, 0}, new long[] {0, 0, 5 * SIDE})
                .overlap();
        double withBig = crowd(bed, 9 * SIDE, new long[] {0, 0, into}, new long[] {0, 5 * SIDE, 0})
                .overlap();
        assertThat(small).isPositive();
        assertThat(withBig).isCloseTo(2 * small, within(1e-9));
    }
}
