package stretchwright.print.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Unit;

class AmountsTest {
    /** Worked example W19 (1.30 m is 1.4217 yd, bought as 1 1/2); the others by hand, 1 yd = 914.4 mm. */
    @ParameterizedTest
    @CsvSource({"1300, 1 1/2 yd", "914.4, 1 yd", "914.5, 1 1/8 yd", "100, 1/8 yd", "1600.2, 1 3/4 yd", "1143, 1 1/4 yd"
    })
    void yardsAreRoundedUpToTheEighth(double mm, String yards) {
        assertThat(Amounts.yards(mm)).isEqualTo(yards);
    }

    /** By hand: 7 mm is 4.4 sixteenths, 25.4 mm one inch. */
    @ParameterizedTest
    @CsvSource({"7, IN, 7 mm (1/4 in)", "25.4, IN, 25.4 mm (1 in)", "7, CM, 7 mm", "9.525, IN, 9.5 mm (3/8 in)"})
    void whatIsSewnIsInMillimetresAndForInchesOnTheRulerToo(double mm, Unit unit, String words) {
        assertThat(Amounts.sewn(mm, unit)).isEqualTo(words);
    }
}
