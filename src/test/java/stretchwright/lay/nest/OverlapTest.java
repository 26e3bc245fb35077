package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class OverlapTest {
    private static final long[] SQUARE_X = {0, 10, 10, 0};
    private static final long[] SQUARE_Y = {0, 0, 10, 10};

    private static boolean squareAnd(long[] x, long[] y) {
        boolean one = Overlap.between(SQUARE_X, SQUARE_Y, x, y);
        assertThat(Overlap.between(x, y, SQUARE_X, SQUARE_Y)).isEqualTo(one);
        return one;
    }

    @Test
    void touchingIsNoOverlap() {
        assertThat(squareAnd(new long[] {10, 20, 20, 10}, new long[] {0, 0, 10, 10}))
                .isFalse();
        assertThat(squareAnd(new long[] {10, 20, 20}, new long[] {5, 0, 10})).isFalse();
        assertThat(squareAnd(new long[] {10, 20, 10}, new long[] {10, 20, 20})).isFalse();
        assertThat(squareAnd(new long[] {15, 15, 5}, new long[] {5, 15, 15})).isFalse();
    }

    @Test
    void theSameOutlineOverlapsItself() {
        assertThat(squareAnd(SQUARE_X, SQUARE_Y)).isTrue();
        assertThat(squareAnd(new long[] {5, 10, 10, 0, 0}, new long[] {0, 0, 10, 10, 0}))
                .isTrue();
    }

    @Test
    void insideOverlapsEvenWhereNoEdgesCross() {
        assertThat(squareAnd(new long[] {4, 6, 5}, new long[] {4, 4, 6})).isTrue();
        assertThat(squareAnd(new long[] {0, 10, 10}, new long[] {0, 0, 10})).isTrue();
        assertThat(squareAnd(new long[] {10, 10, 20, 20, 0, 0}, new long[] {0, 10, 10, 20, 20, 0}))
                .isTrue();
    }

    @Test
    void crossingThroughCornersOnlyOverlaps() {
        // a strip through two opposite corners of the square, corner on corner
        assertThat(squareAnd(new long[] {0, 10, 20, 20}, new long[] {0, 10, 10, 0}))
                .isTrue();
        // two squares shifted along a shared edge line
        assertThat(squareAnd(new long[] {5, 15, 15, 5}, new long[] {0, 0, 10, 10}))
                .isTrue();
    }

    @Test
    void aPieceInANotchOfAnotherIsFree() {
        long[] x = {0, 30, 30, 20, 20, 10, 10, 0};
        long[] y = {0, 0, 30, 30, 10, 10, 30, 30};
        assertThat(Overlap.between(x, y, Outlines.moved(SQUARE_X, 10), Outlines.moved(SQUARE_Y, 10)))
                .isFalse();
        assertThat(Overlap.between(x, y, Outlines.moved(SQUARE_X, 10), Outlines.moved(SQUARE_Y, 9)))
                .isTrue();
    }

    /** Second opinion: JTS 1.20, area of the intersection. */
    @Tag("slow")
    @Test
    void agreesWithTheAreaOfTheIntersection() {
        int overlapping = 0;
        for (int seed = 0; seed < 4000; seed++) {
            RandomStream random = new RandomStream(seed);
            Shape a = Outlines.star(random, 3 + random.below(9), 12);
            Shape b = random.below(8) == 0 ? a : Outlines.star(random, 3 + random.below(9), 12);
            long[] x = Outlines.moved(b.x, random.below(25) - 12);
            long[] y = Outlines.moved(b.y, random.below(25) - 12);
            boolean jts = Outlines.sharedArea(a.x, a.y, x, y) > 1e-6;
            assertThat(Overlap.between(a.x, a.y, x, y)).as("seed %d", seed).isEqualTo(jts);
            overlapping += jts ? 1 : 0;
        }
        assertThat(overlapping).isBetween(400, 3600);
    }
}
