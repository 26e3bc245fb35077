package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ChanceTest {
    /** The normal distribution's table: 0.5, 0.8413, 0.0228, 0.9987 (any handbook of statistics). */
    @Test
    void chancesAreThoseOfTheNormalDistribution() {
        assertThat(Chance.below(0, 0, 1)).isCloseTo(0.5, within(1e-7));
        assertThat(Chance.below(1, 0, 1)).isCloseTo(0.841344746, within(1e-7));
        assertThat(Chance.below(-2, 0, 1)).isCloseTo(0.022750132, within(1e-7));
        assertThat(Chance.below(3, 0, 1)).isCloseTo(0.998650102, within(1e-7));
    }

    @Test
    void theEndsOfTheRangesHoldEightAndNineInTen() {
        assertThat(Chance.below(Chance.EIGHT_IN_TEN, 0, 1)).isCloseTo(0.9, within(1e-6));
        assertThat(Chance.below(Chance.NINE_IN_TEN, 0, 1)).isCloseTo(0.95, within(1e-6));
    }

    /** A pressure at its limit is over it in one of two; one spread below in 16 of 100; none at all never. */
    @Test
    void aboveALimitByTheLogarithm() {
        assertThat(Chance.above(15, 15, 0.3)).isCloseTo(0.5, within(1e-7));
        assertThat(Chance.above(15, 15 * Math.exp(-0.3), 0.3)).isCloseTo(0.158655, within(1e-6));
        assertThat(Chance.above(15, 0, 0.3)).isZero();
    }
}
