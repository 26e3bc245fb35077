package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Finding;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;

/** The hold of a make file: a word, a share or pressures; and the ease. */
class HoldReadTest {
    private static final String LINE = "leg: over boot";

    private static Hold hold(String value) {
        return read(SampleText.with("hold: medium", "hold: " + value)).style().hold();
    }

    @Test
    void aWordAShareOrPressures() {
        assertThat(hold("firm")).isEqualTo(Hold.Named.FIRM);
        assertThat(hold("10 %")).isEqualTo(new Hold.Fixed(0.10));
        // W8 of the trade values: 18 mmHg are 2.400 kPa
        Hold.Profile own = (Hold.Profile) hold("{calf: 18 mmHg, ankle: 2.8 kPa}");
        assertThat(own.kilopascals().get(Level.Name.CALF)).isCloseTo(2.400, within(0.0005));
        assertThat(own.kilopascals().get(Level.Name.ANKLE)).isCloseTo(2.8, within(1e-9));
    }

    @Test
    void easeIsReadByLevelAndMayTakeOff() {
        assertThat(read(SampleText.with(LINE, LINE + "\n  ease: {calf: 1 cm, mid-thigh: -5 mm, hem: 15 mm}"))
                        .style()
                        .ease())
                .isEqualTo(Map.of(Level.Name.CALF, 10.0, Level.Name.MID_THIGH, -5.0, Level.Name.HEM, 15.0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tight | is not a hold",
                "10 | has no unit",
                "60 % | out of range",
                "-5 % | negative",
                "'{calf: 8}' | not a pressure",
                "'{calf: 90 mmHg}' | out of range",
                "'{calf: -1 kPa}' | negative",
                "'{calf: 8 mmHg, shin: 8 mmHg}' | shin",
                "'{}' | holds no key",
                "'[8 mmHg]' | ",
            })
    void whatIsNoHoldIsAFinding(String value, String words) {
        Finding finding = only(SampleText.with("hold: medium", "hold: " + value));
        assertThat(finding.key()).startsWith("style.hold");
        assertThat(String.join(" ", finding.key(), finding.problem(), finding.remedy()))
                .contains(words == null ? "" : words);
    }
}
