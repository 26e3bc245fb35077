package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Unit;

class OwnUnitTest {
    /** By hand: 961 mm is 96.1 cm and 37.83 in. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "MM | 961 mm | 961 mm",
                "CM | 961 mm at rest must pass 690.4 mm. | 96.1 cm at rest must pass 69.0 cm.",
                "IN | 961 mm | 37.83 in",
                "CM | Expected near 572 mm (542 to 602); misread? | Expected near 57.2 cm (54.2 to 60.2); misread?",
                "CM | knee 377 mm (give or take 12) | knee 37.7 cm (give or take 1.2)",
                "IN | outside (403 to 1335 mm) | outside (15.87 to 52.56 in)",
                "CM | 15.3 mmHg, 60 % and 100 | 15.3 mmHg, 60 % and 100",
            })
    void lengthsAreWordedInTheMakersUnit(Unit unit, String from, String to) {
        assertThat(OwnUnit.text(from, unit)).isEqualTo(to);
    }
}
