package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MonotoneCurveTest {
    /** By hand: secants 1 and 2 on steps of 1 and 2; w1 = 5, w2 = 4; slope 9 / (5 / 1 + 4 / 2) = 9 / 7 in the middle. */
    @Test
    void aCurveOfThreePlacesByHand() {
        MonotoneCurve curve = new MonotoneCurve(new double[] {0, 1, 3}, new double[] {0, 1, 5});
        assertThat(curve.at(0.5)).isCloseTo(0.5 - 9.0 / 7 / 8, within(1e-12));
        assertThat(curve.at(2)).isCloseTo(3 + 2 * 0.125 * (9.0 / 7 - 2), within(1e-12));
    }

    @Test
    void itPassesEveryValueAndNeverLeavesTheTwoThatItRunsBetween() {
        Random random = new Random(6);
        for (int n = 0; n < 500; n++) {
            int count = 2 + random.nextInt(7);
            double[] places = new double[count];
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                places[i] = (i == 0 ? 0 : places[i - 1]) + 0.01 + random.nextDouble();
                values[i] = random.nextDouble() * 10 - 5;
            }
            MonotoneCurve curve = new MonotoneCurve(places, values);
            assertThat(curve.at(places[0] - 1)).isEqualTo(values[0]);
            assertThat(curve.at(places[count - 1] + 1)).isEqualTo(values[count - 1]);
            for (int i = 0; i + 1 < count; i++) {
                assertThat(curve.at(places[i])).isCloseTo(values[i], within(1e-12));
                for (int k = 1; k < 20; k++) {
                    double at = curve.at(places[i] + (places[i + 1] - places[i]) * k / 20);
                    assertThat(at)
                            .isBetween(
                                    Math.min(values[i], values[i + 1]) - 1e-12,
                                    Math.max(values[i], values[i + 1]) + 1e-12);
                }
            }
        }
    }

    @Test
    void placesThatDoNotRiseAreNoCurve() {
        assertThatThrownBy(() -> new MonotoneCurve(new double[] {0, 2, 2}, new double[] {1, 2, 3}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MonotoneCurve(new double[] {0}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MonotoneCurve(new double[] {0, Double.NaN}, new double[] {1, 2}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
