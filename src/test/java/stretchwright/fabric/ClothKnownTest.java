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
    /** The steps of the simulation: hand stretch, one weight, three, their narrowing, the strip along, the way back. */
    @ParameterizedTest
    @CsvSource({
        "0, false, false, false, 4.1",
        "1, false, false, false, 2.6",
        "2, false, false, false, 2.3",
        "3, false, false, false, 2.3",
        "3, true, false, false, 2.1",
        "3, true, true, false, 2.0",
        "3, true, true, true, 1.9"
    })
    void theRangesAreThoseOfTheSimulation(int weights, boolean width, boolean along, boolean back, double range) {
        assertThat(new ClothKnown(weights, width, along, back).highOverLow()).isCloseTo(range, within(1e-9));
    }

    @Test
    void eachReadingNarrowsWhateverElseIsKnown() {
        for (int bits = 0; bits < 32; bits++) {
            ClothKnown known = new ClothKnown(bits % 4, (bits & 4) > 0, (bits & 8) > 0, (bits & 16) > 0);
            for (ClothKnown.Reading reading : ClothKnown.Reading.values()) {
                double with = known.with(reading).highOverLow();
                if (known.has(reading)) {
                    assertThat(with).isEqualTo(known.highOverLow());
                } else {
                    assertThat(with).isLessThan(known.highOverLow() - 0.03);
                }
            }
        }
    }

    @Test
    void itIsToldInOneSentence() {
        assertThat(Voice.plain().say(ClothKnown.of(SampleFabric.heavyKnit()).said()))
                .isEqualTo("From what is known of this cloth, the upper end of a pressure is 4.1 times its lower end;"
                        + " a strip across, hung with 100, 250 and 500 g, would make it 2.3 times.");
        assertThat(Voice.plain().say(new ClothKnown(3, true, true, true).said()))
                .contains("1.9 times", "no further test");
    }

    @Test
    void whatIsKnownIsReadFromTheCloth() {
        Fabric cloth = SampleFabric.stiff();
        assertThat(ClothKnown.of(cloth)).isEqualTo(new ClothKnown(2, false, false, false));
        Hung.Way way = new Hung.Way(OptionalDouble.of(0.3), OptionalDouble.of(0.8), OptionalDouble.empty());
        Fabric hung = cloth.with(cloth.test().with(new Hung(way, Hung.Way.NOTHING)));
        assertThat(ClothKnown.of(hung)).isEqualTo(new ClothKnown(2, true, false, true));
        assertThat(ClothKnown.of(hung.turned())).isEqualTo(new ClothKnown(0, false, true, false));
    }

    /** By hand: 40 of 50 mm are a fifth lost where two fifths were gained; 20 of 25 N/m at one stretch are 80 %. */
    @Test
    void aStripTellsNarrowingWayBackAndCreep() {
        LoadCurve straight = LoadCurve.through(List.of(
                new LoadCurve.Reading(0.1, 25), new LoadCurve.Reading(0.2, 50), new LoadCurve.Reading(0.4, 100)));
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
