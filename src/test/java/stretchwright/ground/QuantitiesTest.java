package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {
    @ParameterizedTest
    @CsvSource({
        "74.2, 742",
        "13 1/2 in, 342.9",
        "1/4 in, 6.35",
        "1.6 m, 1600",
        "'74,2', 742",
        "5 mm, 5",
        "1 1/2 yd, 1371.6",
        "' 96.1 cm ', 961",
        "38 in, 965.2",
        "-3 cm, -30"
    })
    void lengthsAreReadAsPeopleWriteThem(String text, double mm) {
        assertThat(Quantities.length(text, Unit.CM).orElseThrow()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "abc",
                "12 parsec",
                "1/0 in",
                "1e999",
                "NaN",
                "Infinity",
                "12 34",
                "1 2 3",
                "--3",
                "64 5/4 in"
            })
    void whatIsNoLengthIsRefused(String text) {
        assertThat(Quantities.length(text, Unit.CM)).isEmpty();
    }

    @Test
    void aShareNeedsItsSign() {
        assertThat(Quantities.share("60 %").orElseThrow()).isCloseTo(0.6, within(1e-12));
        assertThat(Quantities.share("60")).isEmpty();
        assertThat(Quantities.share("0").orElseThrow()).isZero();
    }

    /** 1 kgf = 9.80665 N by definition (3rd CGPM, 1901). */
    @Test
    void forcesInNewtonOrGrams() {
        assertThat(Quantities.force("3.1 N").orElseThrow()).isEqualTo(3.1);
        assertThat(Quantities.force("500 g").orElseThrow()).isCloseTo(4.903325, within(1e-9));
        assertThat(Quantities.force("3 lb")).isEmpty();
    }

    /** 2.6 oz/yd2 is 88 g/m2 (16 CFR 1610 as quoted in the trade values). */
    @Test
    void clothWeight() {
        assertThat(Quantities.clothWeight("260 g/m2").orElseThrow()).isEqualTo(260);
        assertThat(Quantities.clothWeight("2.6 oz/yd2").orElseThrow()).isCloseTo(88, within(0.2));
    }

    /** W17: 100 mm is 283.465 points of 1/72 in. */
    @Test
    void w17PointsInAHundredMillimetres() {
        assertThat(Unit.IN.fromMm(100) * 72).isCloseTo(283.465, within(5e-4));
    }
}
