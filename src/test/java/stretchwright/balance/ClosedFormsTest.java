package stretchwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tubes whose balance is known on paper; docs/maths/balance.md has the formulas. */
class ClosedFormsTest {
    private static final double GIVE = Settling.GIVE;

    private static Cloth cloth(double round, double along, double coupling) {
        return new Cloth(Tension.straight(round), Tension.straight(along), coupling);
    }

    /**
     * Tx 0.02 N/mm on 400 mm of cloth, 20 % stretched: pulled by its end, F = sqrt(2 q K W u), q = 2 pi mu Tx; let go, u / 2
     * stays. The soft onset of friction takes give ln 2 off u, and what a slide keeps gives back 2.3 give more.
     */
    @ParameterizedTest
    @CsvSource({"30, 0.01", "15, 0.01", "10, 0.01", "30, 1", "15, 1", "10, 1"})
    void aTubeOnACylinderIsPulledByItsEnd(double u, double give) {
        PlainTube tube = PlainTube.of(400, 480, 0, cloth(100, 150, 0), 0.4);
        Settling pulled = tube.run(Balance.Hold.waist(-u), give);
        double q = 2 * Math.PI * 0.4 * 0.020;
        double force = Math.sqrt(2 * q * 0.150 * 400 * u);
        double withGive = force * Math.sqrt(1 - give * Math.log(2) / u);
        assertThat(pulled.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(pulled.reaction(0)).isCloseTo(withGive, within(2e-4 * force));
        Settling left = tube.run(new Balance.State(pulled.slides(), pulled.anchors()), Balance.Hold.NONE, give);
        assertThat(left.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(left.slides()[0]).isBetween(-u / 2, -u / 2 + 2.32 * give);
    }

    /** Cloth so stiff along that it slides as one: 2 pi (mu +- sin a) times all its tension round. */
    @ParameterizedTest
    @ValueSource(doubles = {-8, 8})
    void aStiffTubeSlidesOnACone(double u) {
        double sine = 0.12;
        double mu = 0.4;
        PlainTube tube = PlainTube.of(400, 440, 2 * Math.PI * sine, cloth(100, 1e6, 0), mu);
        Settling pulled = tube.run(Balance.Hold.waist(u), 0.01);
        double mean = (440 + 2 * Math.PI * sine * (200 + u)) / 400 - 1;
        double force = 2 * Math.PI * (mu * Math.signum(u) + sine) * 0.1 * mean * 400;
        assertThat(pulled.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(-pulled.reaction(0)).isCloseTo(force, within(2e-4 * Math.abs(force)));
    }

    @Test
    void aStiffTubeSlidesOffAConeAloneWhereFrictionIsLessThanItsSine() {
        double sine = 0.12;
        Cloth stiff = cloth(100, 1e6, 0);
        PlainTube slides = PlainTube.of(400, 440, 2 * Math.PI * sine, stiff, 0.97 * sine);
        PlainTube stays = PlainTube.of(400, 440, 2 * Math.PI * sine, stiff, 1.03 * sine);
        Settling off = slides.run(Balance.Hold.NONE, 0.01);
        Settling on = stays.run(Balance.Hold.NONE, 0.01);
        assertThat(off.slides()[0]).isLessThan(-50);
        assertThat(on.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(on.slides()[0]).isBetween(-0.05, 0.0);
    }

    /** Pulled cloth narrows, presses more and holds itself: N = (T0 W / nu)(e^(2 pi mu nu L / W) - 1). */
    @Test
    void aTubeIsItsOwnCapstan() {
        double mu = 0.4;
        double nu = 0.3;
        PlainTube tube = PlainTube.of(400, 480, 0, cloth(100, 20_000, nu), mu);
        Settling pulled = tube.run(Balance.Hold.waist(-40), GIVE);
        double force = 0.020 * 400 / nu * Math.expm1(2 * Math.PI * mu * nu * 400 / 400);
        assertThat(pulled.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(pulled.reaction(0)).isCloseTo(force, within(1e-4 * force));
    }

    /** A tube on a cylinder holds while its weight is at most 2 pi mu times all its tension round. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1})
    void aTubeHangsWhileFrictionCarriesItsWeight(double give) {
        double weight = 2.2;
        double limit = weight / (2 * Math.PI * 0.020 * 400);
        Cloth stiff = cloth(100, 1e6, 0);
        PlainTube tube = PlainTube.of(400, 480, 0, stiff, 0.97 * limit).weight(weight);
        Settling falls = tube.run(Balance.Hold.NONE, give);
        Settling holds =
                PlainTube.of(400, 480, 0, stiff, 1.03 * limit).weight(weight).run(Balance.Hold.NONE, give);
        assertThat(falls.outcome()).isEqualTo(Settled.Outcome.FALLS);
        assertThat(holds.outcome()).isEqualTo(Settled.Outcome.SETTLED);
        assertThat(holds.slides()[0]).isBetween(0.0, 3 * give);
    }

    /** Cloth pulled over the crotch from behind: Fb / Ff = e^(mu pi). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2, 0.4, 0.6})
    void forcesOverTheCrotchAreThoseOfARope(double mu) {
        Tube plain =
                PlainTube.of(400, 480, 0, cloth(100, 150, 0), 0.4).steps(10).tube();
        Tube tube = new Tube(
                plain.leg().subList(0, 4),
                plain.leg().subList(4, 11),
                plain.restFront(),
                plain.restBack(),
                plain.trunkGirths(),
                plain.legGirths(),
                plain.cloth(),
                Optional.of(new Rise(50, 280, 330, mu)),
                Optional.empty(),
                Optional.empty());
        Pose squat = tube.standing(300, 560);
        Placing placing = new Placing(tube, squat);
        Net net = placing.net();
        Balance.Hold placed = new Balance.Hold(OptionalDouble.of(0), OptionalDouble.empty());
        Settling pulled = Balance.run(tube, placing, net, Balance.State.placed(net.unknowns), placed, 0.05);
        double passed = pulled.slides()[0];
        double front = (300 + passed) / 280 - 1;
        double back = (560 - passed) / 330 - 1;
        assertThat(passed).isGreaterThan(1);
        assertThat(back / front).isCloseTo(Math.exp(mu * Math.PI), within(5e-4 * back / front));
    }

    /**
     * Without friction, ends held, all curves straight: Y rest, s = sp + A e^(mY) + B e^(-mY), q = 2 pi sin a / W,
     * m = q sqrt(Kx / Ky), sp = (c / Kx - (G0 / W - 1)) / q.
     */
    @ParameterizedTest
    @ValueSource(ints = {34, 280})
    void aTubeWithoutFrictionOnACone(int steps) {
        double width = 2 * Math.PI * 50 / 1.15;
        double kx = 100;
        double ky = 150;
        double c = 20;
        double nu = c / ky;
        double above = 2 * Math.PI * 45;
        PlainTube tube = PlainTube.of(width, above, 2 * Math.PI * 0.12, cloth(kx - nu * nu * ky, ky, nu), 0)
                .length(280, 300)
                .steps(steps);
        Settling settled = tube.run(Balance.Hold.PLACED, GIVE);
        double q = 2 * Math.PI * 0.12 / width;
        double m = q * Math.sqrt(kx / ky);
        double sp = (c / kx - (above / width - 1)) / q;
        double b = (300 - sp + sp * Math.exp(m * 280)) / (Math.exp(-m * 280) - Math.exp(m * 280));
        double a = -sp - b;
        double worst = 0;
        double most = 0;
        for (int k = 0; k <= steps; k++) {
            double y = 280.0 * k / steps;
            double wanted = sp + a * Math.exp(m * y) + b * Math.exp(-m * y) - 300.0 * k / steps;
            worst = Math.max(worst, Math.abs(settled.slides()[k] - wanted));
            most = Math.max(most, Math.abs(wanted));
        }
        assertThat(most).isCloseTo(4.62, within(0.01));
        assertThat(worst).isLessThan(0.01);
    }

    /** Two places only, the lower one free: the slope of the energy, sampled, has its root where the tube settles. */
    @Test
    void theFreeEndOfOneStepStandsAtTheLeastEnergy() {
        Cloth cloth = Cloth.ofStrips(
                List.of(0.2, 0.4, 0.6), List.of(62.0, 138.0, 260.0), List.of(0.2, 0.4), List.of(80.0, 190.0), 0.3);
        PlainTube tube = PlainTube.of(300, 330, -0.6, cloth, 0).length(60, 70).steps(1);
        Net net = new Placing(tube.tube(), tube.standing()).net();
        double best = 0;
        for (int k = -200_000; k <= 200_000; k++) {
            double at = k / 10_000.0;
            if (energy(net, at) < energy(net, best)) {
                best = at;
            }
        }
        Settling settled = tube.run(Balance.Hold.waist(0), GIVE);
        assertThat(settled.slides()[1]).isCloseTo(best, within(0.005));
        assertThat(Math.abs(best)).isBetween(1.0, 19.0);
    }

    private static double energy(Net net, double end) {
        return new Strained(net, new double[] {0, end}, new double[2], GIVE).energy(new double[2]);
    }
}
