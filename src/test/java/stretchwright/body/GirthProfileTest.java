package stretchwright.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;

class GirthProfileTest {
    /** Invented: a woman's full set. */
    private static final Body BODY = MeasuringTest.body(
            Figure.WOMAN,
            OptionalDouble.empty(),
            Map.of(
                    Measure.STATURE, 1627.0,
                    Measure.HIP_GIRTH, 961.0,
                    Measure.CROTCH_HEIGHT, 772.0,
                    Measure.THIGH_GIRTH, 570.0,
                    Measure.KNEE_GIRTH, 365.0,
                    Measure.KNEE_HEIGHT, 460.0,
                    Measure.CALF_GIRTH, 350.0,
                    Measure.MID_THIGH_GIRTH, 480.0));

    @Test
    void passesThroughEveryLevel() {
        GirthProfile leg = GirthProfile.of(BODY);
        assertThat(leg.girthAt(460)).isCloseTo(365, within(1e-9));
        assertThat(leg.girthAt((460 + 772) / 2.0)).isCloseTo(480, within(1e-9));
        assertThat(leg.girthAt(772 * 0.97)).isCloseTo(570, within(1e-9));
        assertThat(leg.girthAt(BODY.mm(Measure.CALF_HEIGHT))).isCloseTo(350, within(1e-9));
        assertThat(leg.girthAt(BODY.mm(Measure.ANKLE_HEIGHT))).isCloseTo(BODY.mm(Measure.ANKLE_GIRTH), within(1e-9));
        assertThat(leg.girthAt(772)).isBetween(570.0, 570 * 1.05);
    }

    @Test
    void staysAtTheEndsBeyondThem() {
        GirthProfile leg = GirthProfile.of(BODY);
        assertThat(leg.girthAt(900)).isEqualTo(leg.girthAt(772));
        assertThat(leg.girthAt(0)).isEqualTo(BODY.mm(Measure.ANKLE_GIRTH));
    }

    /** No bulge between two levels, and no kink at one: the slope just below and just above is the same. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Figure.class)
    void isSmoothAndNeverLeavesItsNeighbours(Figure figure) {
        for (int seed = 0; seed < 100; seed++) {
            Map<Measure, Double> all = MeasuringTest.drawn(figure, RandomStream.of(seed, "profile"));
            Optional<Body> body =
                    Measuring.body(figure, OptionalDouble.empty(), new EnumMap<>(all), new Findings("seed " + seed));
            if (body.isEmpty()) {
                continue;
            }
            GirthProfile leg = GirthProfile.of(body.get());
            double knee = body.get().mm(Measure.KNEE_HEIGHT);
            double mid = (knee + body.get().mm(Measure.CROTCH_HEIGHT)) / 2;
            double low = Math.min(leg.girthAt(knee), leg.girthAt(mid)) - 1e-9;
            double high = Math.max(leg.girthAt(knee), leg.girthAt(mid)) + 1e-9;
            for (double h = knee; h <= mid; h += 2) {
                assertThat(leg.girthAt(h)).as("seed " + seed).isBetween(low, high);
            }
            for (double level : new double[] {body.get().mm(Measure.CALF_HEIGHT), knee, mid}) {
                double below = (leg.girthAt(level) - leg.girthAt(level - 1e-4)) / 1e-4;
                double above = (leg.girthAt(level + 1e-4) - leg.girthAt(level)) / 1e-4;
                assertThat(above).as("seed %s level %s", seed, level).isCloseTo(below, within(1e-3));
            }
        }
    }

    /** By hand: waist 742 at 1030, hip 961 at 830; half way between 851.5; a quarter down 796.75. */
    @Test
    void aboveTheCrotchTheWholeBodyInProportion() {
        GirthProfile profile = GirthProfile.of(SampleBody.smallAdult());
        assertThat(profile.wholeGirthAt(1100)).isEqualTo(742);
        assertThat(profile.wholeGirthAt(1030)).isEqualTo(742);
        assertThat(profile.wholeGirthAt(980)).isCloseTo(796.75, within(1e-9));
        assertThat(profile.wholeGirthAt(930)).isCloseTo(851.5, within(1e-9));
        assertThat(profile.wholeGirthAt(830)).isEqualTo(961);
        assertThat(profile.wholeGirthAt(772)).isEqualTo(961);
    }

    @Test
    void refusesALegUpsideDown() {
        Map<Measure, Value> values = new EnumMap<>(BODY.values());
        values.put(Measure.KNEE_HEIGHT, new Value(100, Value.Origin.GIVEN, 1));
        Body wrong = new Body(Figure.WOMAN, OptionalDouble.empty(), values);
        assertThatThrownBy(() -> GirthProfile.of(wrong)).isInstanceOf(IllegalArgumentException.class);
    }
}
