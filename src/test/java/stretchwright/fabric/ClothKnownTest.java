package stretchwright.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Voice;

/** What one more reading of a cloth buys. */
class ClothKnownTest {
    private static ClothKnown known(int weights, boolean width, boolean along, boolean back, boolean halfAnHour) {
        return new ClothKnown(weights, weights == 1 ? 0.6 : 0.16, width, along, back, halfAnHour, 0.6, 0.16);
    }

    /** To the digits told these are what the synthetic garments of {@link CalibrationTest} have: docs/maths/fit.md holds both. */
    @ParameterizedTest
    @CsvSource({
        "0, false, false, false, false, 6.2",
        "1, false, false, false, false, 2.7",
        "2, false, false, false, false, 2.2",
        "3, false, false, false, false, 2.2",
        "3, true, false, false, false, 2.0",
        "3, true, true, false, false, 2.0",
        "3, true, true, true, false, 2.0",
        "3, true, true, true, true, 1.9"
    })
    void theRangesAreThoseOfTheJudgement(
            int weights, boolean width, boolean along, boolean back, boolean halfAnHour, double range) {
        assertThat(known(weights, width, along, back, halfAnHour).highOverLow()).isCloseTo(range, within(0.05));
    }

    /** A strip along tells through the narrowing alone, and only beside a strip across. */
    @Test
    void noReadingWidensWhateverElseIsKnown() {
        for (int bits = 0; bits < 64; bits++) {
            ClothKnown known = known(bits % 4, (bits & 4) > 0, (bits & 8) > 0, (bits & 16) > 0, (bits & 32) > 0);
            for (ClothKnown.Reading reading : ClothKnown.Reading.values()) {
                double with = known.with(reading).highOverLow();
                boolean tells = !known.has(reading)
                        && (reading != ClothKnown.Reading.ALONG || known.narrowing() && known.weights() > 0);
                if (tells) {
                    assertThat(with).as(known + " " + reading).isLessThan(known.highOverLow());
                } else {
                    assertThat(with).as(known + " " + reading).isEqualTo(known.highOverLow());
                }
            }
        }
    }

    @Test
    void itIsToldInOneSentence() {
        assertThat(Voice.plain().say(ClothKnown.of(SampleFabric.heavyKnit()).said()))
                .isEqualTo("From what is known of this cloth, the upper end of a pressure is 6.2 times its lower end;"
                        + " a strip across, hung with 100, 250 and 500 g, would make it 2.2 times.");
        assertThat(Voice.plain().say(known(3, false, true, false, false).said()))
                .contains("2.2 times its lower end; the width of that strip under 500 g would make it 2.0 times");
        assertThat(Voice.plain().say(known(3, true, true, true, true).said())).contains("1.9 times", "no further test");
    }

    @Test
    void whatIsKnownIsReadFromTheCloth() {
        Fabric cloth = SampleFabric.stiff();
        ClothKnown weighed = ClothKnown.of(cloth);
        assertThat(weighed.weights()).isEqualTo(2);
        assertThat(weighed.first()).isEqualTo(0.20);
        Hung.Way way = new Hung.Way(OptionalDouble.of(0.3), OptionalDouble.of(0.8), OptionalDouble.empty());
        Fabric hung = cloth.with(cloth.test().with(new Hung(way, Hung.Way.NOTHING)));
        assertThat(ClothKnown.of(hung))
                .isEqualTo(weighed.with(ClothKnown.Reading.WIDTH).with(ClothKnown.Reading.WAY_BACK));
        ClothKnown turned = ClothKnown.of(hung.turned());
        assertThat(turned.weights()).isZero();
        assertThat(turned.along()).isTrue();
        assertThat(turned.narrowing()).isFalse();
    }

    /** By hand: 40 of 50 mm are a fifth lost where two fifths were gained; 20 of 25 N/m at one stretch are 80 %. */
    @Test
    void aStripTellsNarrowingWayBackAndCreep() {
        LoadCurve straight =
                LoadCurve.through(List.of(new LoadCurve.Reading(0.2, 50), new LoadCurve.Reading(0.4, 100)));
        assertThat(Hung.narrowing(40, 0.4)).isCloseTo(0.5, within(1e-12));
        assertThat(Hung.wayBack(straight, List.of(new LoadCurve.Reading(0.1, 20))))
                .isCloseTo(0.8, within(1e-12));
        assertThat(Hung.wayBack(straight, List.of(new LoadCurve.Reading(0.1, 20), new LoadCurve.Reading(0.2, 25))))
                .isCloseTo(Math.sqrt(0.8 * 0.5), within(1e-12));
        assertThat(Hung.wayBack(straight, List.of(new LoadCurve.Reading(0.1, 26))))
                .isEqualTo(1);
        assertThat(Hung.relaxed(straight, 0.4)).isCloseTo(0.980665, within(1e-9));
    }
}
