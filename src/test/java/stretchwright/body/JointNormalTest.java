package stretchwright.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class JointNormalTest {
    private static final double[][] COVARIANCE = {{4, 2, 0.6}, {2, 9, 1.5}, {0.6, 1.5, 1}};
    private static final JointNormal THREE = new JointNormal(new double[] {10, 20, 30}, COVARIANCE);

    /** By hand: slope 2/4 on the first, so 20 + 0.5 x (14 - 10) = 22, variance 9 - 2 x 2 / 4 = 8. */
    @Test
    void oneKnownValueMovesTheOthersByTheirSlope() {
        var expected = THREE.expect(new double[] {14, Double.NaN, Double.NaN});
        assertThat(expected.logs()[1]).isCloseTo(22, within(1e-12));
        assertThat(expected.spreads()[1]).isCloseTo(Math.sqrt(8), within(1e-12));
    }

    @Test
    void nothingKnownGivesThePopulation() {
        var expected = THREE.expect(new double[] {Double.NaN, Double.NaN, Double.NaN});
        assertThat(expected.logs()).containsExactly(10, 20, 30);
        assertThat(expected.spreads()).containsExactly(2, 3, 1);
    }

    /** A second opinion: a large sample, kept where the known value comes close to the given one. */
    @Test
    void agreesWithPickingFromALargeSample() {
        RandomStream random = new RandomStream(5);
        double sum = 0;
        double square = 0;
        int kept = 0;
        for (int i = 0; i < 1_500_000; i++) {
            double u = random.nextGaussian();
            double v = random.nextGaussian();
            double w = random.nextGaussian();
            double first = 10 + 2 * u;
            double second = 20 + u + Math.sqrt(8) * v;
            // third: covariance 0.6 with the first, 1.5 with the second, variance 1
            double third = 30 + 0.3 * u + 1.2 / Math.sqrt(8) * v + Math.sqrt(1 - 0.09 - 0.18) * w;
            if (Math.abs(first - 12) < 0.15 && Math.abs(second - 17) < 0.3) {
                sum += third;
                square += third * third;
                kept++;
            }
        }
        var expected = THREE.expect(new double[] {12, 17, Double.NaN});
        double mean = sum / kept;
        assertThat(kept).isGreaterThan(1000);
        assertThat(expected.logs()[2]).isCloseTo(mean, within(0.08));
        assertThat(expected.spreads()[2]).isCloseTo(Math.sqrt(square / kept - mean * mean), within(0.05));
    }

    /** Reading leave-one-out off the inverse gives the same as leaving each one out in turn. */
    @Test
    void agreementIsLeavingEachOneOut() {
        for (Figure figure : Figure.values()) {
            for (JointNormal people : Survey.of(figure).levels()) {
                double[] logs = new double[Measure.values().length + (figure == Figure.CHILD ? 1 : 0)];
                RandomStream random = new RandomStream(figure.ordinal());
                for (int i = 0; i < logs.length; i++) {
                    logs[i] = people.mean(i) + 0.3 * people.spread(i) * random.nextGaussian();
                }
                var agreement = people.agreement(logs);
                for (int i = 0; i < logs.length; i++) {
                    double[] rest = logs.clone();
                    rest[i] = Double.NaN;
                    var expected = people.expect(rest);
                    assertThat(agreement.expected()[i]).isCloseTo(expected.logs()[i], within(1e-7));
                    assertThat(agreement.spreads()[i]).isCloseTo(expected.spreads()[i], within(1e-7));
                }
            }
        }
    }
}
