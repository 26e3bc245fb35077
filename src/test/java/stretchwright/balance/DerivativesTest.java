package stretchwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.RandomStream;

/** Slopes against central differences: of a tension, of the energy, of its gradient, of friction. */
class DerivativesTest {
    private static final double STEP = 1e-6;

    private static final Tension CURVE =
            Tension.through(List.of(0.1, 0.2, 0.4, 0.6), List.of(25.0, 62.0, 138.0, 260.0));

    @ParameterizedTest
    @ValueSource(doubles = {-0.3, -0.01, -0.0039, -0.002, -0.0005, 0.0005, 0.05, 0.15, 0.3, 0.59, 0.7, 2})
    void energyTensionAndStiffnessAreOne(double strain) {
        double energySlope = (CURVE.energy(strain + STEP) - CURVE.energy(strain - STEP)) / (2 * STEP);
        double tensionSlope = (CURVE.tension(strain + STEP) - CURVE.tension(strain - STEP)) / (2 * STEP);
        assertThat(CURVE.tension(strain)).isCloseTo(energySlope, within(1e-9));
        assertThat(CURVE.stiffness(strain)).isCloseTo(tensionSlope, within(1e-6));
    }

    @Test
    void aTensionPassesItsReadingsAndGoesSlackSoftly() {
        assertThat(CURVE.tension(0.2)).isCloseTo(0.062, within(1e-12));
        assertThat(CURVE.tension(0.6)).isCloseTo(0.260, within(1e-12));
        assertThat(CURVE.tension(0)).isZero();
        assertThat(CURVE.stiffness(-0.004)).isCloseTo(0.02 * CURVE.stiffness(0), within(1e-12));
        assertThat(CURVE.tension(-0.1)).isBetween(-0.001, 0.0);
    }

    /** A strip that was free to narrow reads low: with nothing pulling round, its curve comes out again. */
    @Test
    void aFreeStripOfTheClothReadsAsTheStripDid() {
        double nu = 0.3;
        Cloth cloth = Cloth.ofStrips(List.of(1.0), List.of(300.0), List.of(1.0), List.of(500.0), nu);
        double pull = 0.050;
        double round = -nu * pull / 0.3;
        double free = 0.1;
        assertThat(cloth.along().tension(free + nu * round)).isCloseTo(pull, within(1e-12));
    }

    @Test
    void gradientHessianAndFrictionAgreeWithDifferences() {
        RandomStream stream = new RandomStream(7);
        RandomTubes tubes = new RandomTubes(stream, 4, 7);
        for (int garment = 0; garment < 40; garment++) {
            Tube tube = tubes.tube();
            Net net = new Placing(tube, tubes.bent(tube)).net();
            double[] u = new double[net.unknowns];
            for (int k = 0; k < u.length; k++) {
                u[k] = stream.between(-6, 6);
            }
            check(net, u);
        }
    }

    private static void check(Net net, double[] u) {
        int n = u.length;
        Strained at = at(net, u);
        double[] gradient = at.pull();
        double[] ones = new double[n];
        java.util.Arrays.fill(ones, 1);
        double[] hessian = new double[n * Net.BAND];
        double[] friction = new double[n * Net.BAND];
        at.addHessian(hessian);
        at.addCapacitySlope(ones, friction);
        double[] middle = new double[n];
        at.capacity(middle);
        for (int column = 0; column < n; column++) {
            double[] up = u.clone();
            double[] down = u.clone();
            up[column] += 1e-5;
            down[column] -= 1e-5;
            double slope = (energy(net, up) - energy(net, down)) / 2e-5;
            assertThat(gradient[column]).isCloseTo(slope, within(1e-6));
            agree(hessian, at(net, up).pull(), at(net, down).pull(), column, ones);
            double[] above = new double[n];
            double[] below = new double[n];
            at(net, up).capacity(above);
            at(net, down).capacity(below);
            agree(friction, above, below, column, middle);
        }
    }

    private static Strained at(Net net, double[] u) {
        return new Strained(net, u, new double[u.length], Settling.GIVE);
    }

    /** Of the cloth alone. */
    private static double energy(Net net, double[] u) {
        return at(net, u).energy(new double[u.length]);
    }

    /** Rows where friction is none are left out: there its slope has a corner. */
    private static void agree(double[] rows, double[] above, double[] below, int column, double[] counted) {
        for (int row = 0; row < above.length; row++) {
            int place = column - row + 2;
            double wanted = (above[row] - below[row]) / 2e-5;
            double stored = place >= 0 && place < Net.BAND ? rows[row * Net.BAND + place] : 0;
            if (counted[row] > 0) {
                assertThat(stored).isCloseTo(wanted, within(1e-5 + 1e-5 * Math.abs(wanted)));
            }
        }
    }
}
