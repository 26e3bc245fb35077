package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.body.Comfort;
import stretchwright.fabric.Laplace;

/** The published classes of compression, and where the limits of comfort stand among them. */
class PressureClassesTest {
    /** RAL-GZ 387 (Germany), as printed in both units: class, mmHg from and to, kPa from and to. */
    @ParameterizedTest
    @CsvSource({"I, 18, 21, 2.4, 2.8", "II, 23, 32, 3.1, 4.3", "III, 34, 46, 4.5, 6.1", "IV, 49, 49, 6.5, 6.5"})
    void ralGz387(String name, double from, double to, double kPaFrom, double kPaTo) {
        assertThat(Laplace.fromMmHg(from)).as(name).isCloseTo(kPaFrom, within(0.05));
        assertThat(Laplace.fromMmHg(to)).as(name).isCloseTo(kPaTo, within(0.05));
        assertThat(from).as(name).isGreaterThanOrEqualTo(Comfort.DEVICE);
    }

    /** ENV 12718 class A 10 to 14, I 15 to 21, II 23 to 32, III 34 to 46 mmHg: beyond class A we caution. */
    @ParameterizedTest
    @CsvSource({"A, 10, 14", "I, 15, 21", "II, 23, 32", "III, 34, 46"})
    void env12718(String name, double from, double to) {
        assertThat(Laplace.toMmHg(Laplace.fromMmHg(from))).isCloseTo(from, within(1e-9));
        if (name.equals("A")) {
            assertThat(from).isGreaterThanOrEqualTo(Comfort.NOTE);
            assertThat(to).isLessThan(Comfort.CAUTION);
        } else {
            assertThat(from).as(name).isGreaterThanOrEqualTo(Comfort.CAUTION);
        }
    }

    /** BS 6612 (UK Drug Tariff specification 40): 1 14 to 17, 2 18 to 24, 3 25 to 35 mmHg at the ankle; 3 is stopped. */
    @Test
    void bs6612() {
        assertThat(Comfort.CAUTION).isBetween(14.0, 17.0);
        assertThat(Comfort.DEVICE).isEqualTo(18);
        assertThat(Comfort.STOP).isEqualTo(25);
    }

    /**
     * Anthropometry, Apparel Sizing and Design (Elsevier) p. 344 and 345: under 0.4 kPa negligible, comfortable to 1.3,
     * critical to 2.0, largest for sportswear 3.3.
     */
    @ParameterizedTest
    @CsvSource({"0.4, NEGLIGIBLE", "1.3, NOTE", "2.0, CAUTION", "3.3, STOP"})
    void limitsOfComfort(double kPa, String limit) {
        double mmHg = switch (limit) {
            case "NEGLIGIBLE" -> Comfort.NEGLIGIBLE;
            case "NOTE" -> Comfort.NOTE;
            case "CAUTION" -> Comfort.CAUTION;
            default -> Comfort.STOP;
        };
        assertThat(Laplace.fromMmHg(mmHg)).isCloseTo(kPa, within(0.05));
    }

    /** Sen'i Gakkaishi 47(6), 1991: a waistband of 17.5 +/- 2.1 mmHg is comfortable, over 35 uncomfortable. */
    @Test
    void waistbands() {
        assertThat(Comfort.CAUTION_BAND).isGreaterThan(17.5 + 2.1);
        assertThat(Comfort.STOP_BAND).isEqualTo(35);
    }

    /** What 124 women of 19 to 87 bore at the waist: 25.2 mmHg at 25, 20.9 at 40, 13.7 at 65 (the row's own figures). */
    @Test
    void waistbandsByAge() {
        assertThat(Comfort.band(OptionalDouble.of(25))).isCloseTo(25.2, within(0.05));
        assertThat(Comfort.band(OptionalDouble.of(40))).isCloseTo(20.9, within(0.05));
        assertThat(Comfort.band(OptionalDouble.of(65))).isCloseTo(13.7, within(0.05));
        assertThat(Comfort.band(OptionalDouble.of(12))).isEqualTo(Comfort.CAUTION_BAND);
        assertThat(Comfort.band(OptionalDouble.of(99))).isPositive();
        assertThat(Comfort.band(OptionalDouble.empty())).isEqualTo(Comfort.CAUTION_BAND);
    }
}
