package stretchwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.RandomStream;

/** A whole garment, standing, in a squat and back. */
class BalanceTest {
    private static final EveningTube EVENING = EveningTube.standard();

    private static List<Settled> squat(EveningTube evening) {
        return Balance.through(evening.tube(), List.of(evening.standing(), evening.squat(), evening.standing()));
    }

    @Test
    void theSeatPullsTheBackDownAndMostOfItStays() {
        List<Settled> all = squat(EVENING);
        assertThat(all).allMatch(Settled::isSettled);
        double standing = all.get(0).waist().back();
        double deep = all.get(1).waist().back();
        assertThat(standing).isBetween(5.0, 40.0);
        assertThat(deep).isGreaterThan(standing + 30);
        assertThat(all.get(2).waist().back()).isBetween(deep - 8, deep);
        assertThat(all.get(1).waist().pull())
                .isGreaterThan(1.5 * all.get(0).waist().pull());
        assertThat(all.get(0).hem().side()).isNegative();
    }

    /** A pull that is held needs at least the grip there, else it would not slide. */
    @Test
    void whatSlidesWasPulledByMoreThanItsGrip() {
        Settled.Edge waist = squat(EVENING).get(1).waist();
        assertThat(waist.pull()).isGreaterThan(waist.grip());
    }

    @Test
    void theFirstSquatDoesNearlyAll() {
        List<Pose> poses = new ArrayList<>(List.of(EVENING.standing()));
        for (int k = 0; k < 10; k++) {
            poses.add(EVENING.squat());
            poses.add(EVENING.standing());
        }
        List<Settled> all = Balance.through(EVENING.tube(), poses);
        assertThat(all).allMatch(Settled::isSettled);
        assertThat(all.get(19).waist().back()).isCloseTo(all.get(1).waist().back(), within(4.0));
        assertThat(all.get(19).waist().back()).isCloseTo(all.get(17).waist().back(), within(0.05));
        assertThat(all.get(20).hem().side()).isCloseTo(all.get(2).hem().side(), within(0.1));
    }

    /** Once nothing changes any more, nothing slides any more. */
    @Test
    void standingStillDoesNotCreep() {
        Pose standing = EVENING.standing();
        List<Settled> all = Balance.through(EVENING.tube(), Collections.nCopies(12, standing));
        assertThat(all.get(11).waist().side()).isCloseTo(all.get(0).waist().side(), within(0.3));
        assertThat(all.get(11).hem().side()).isCloseTo(all.get(0).hem().side(), within(0.3));
    }

    @Test
    void finerStepsTellTheSame() {
        List<Settled> coarse = squat(EVENING);
        List<Settled> fine = squat(EVENING.steps(53));
        for (int k = 0; k < 3; k++) {
            assertThat(fine.get(k).waist().back())
                    .isCloseTo(coarse.get(k).waist().back(), within(1.0));
            assertThat(fine.get(k).waist().front())
                    .isCloseTo(coarse.get(k).waist().front(), within(1.0));
            assertThat(fine.get(k).hem().side()).isCloseTo(coarse.get(k).hem().side(), within(1.0));
        }
    }

    @Test
    void moreFrictionMoreElasticAndAShorterLegWorkAsTheyShould() {
        double usual = squat(EVENING).get(1).waist().back();
        assertThat(squat(EVENING.friction(0.25)).get(1).waist().back()).isGreaterThan(usual);
        assertThat(squat(EVENING.friction(0.6)).get(1).waist().back()).isLessThan(usual);
        assertThat(squat(EVENING.elastic(5)).get(1).waist().back()).isLessThan(usual - 10);
        double hem = squat(EVENING).get(0).hem().side();
        assertThat(squat(EVENING.shorterLeg(0.02)).get(0).hem().side()).isBetween(hem + 1, 0.0);
    }

    /**
     * One input after the other in small steps, standing and in the squat: no jump, and slides do not turn back. The pull
     * may: in ever wider cloth less friction helps the edge, then less is left to pull.
     */
    @ParameterizedTest
    @CsvSource({"friction", "leg", "rise", "waist", "elastic", "width"})
    void theEdgesFollowEachInputSmoothly(String input) {
        List<Settled> last = squat(swept(input, 0));
        double[] turned = new double[4];
        for (int k = 1; k <= 40; k++) {
            List<Settled> next = squat(swept(input, k / 40.0));
            double[] moved = {
                next.get(0).waist().side() - last.get(0).waist().side(),
                next.get(1).waist().back() - last.get(1).waist().back(),
                next.get(0).hem().side() - last.get(0).hem().side(),
                next.get(1).waist().pull() - last.get(1).waist().pull()
            };
            for (int what = 0; what < moved.length; what++) {
                assertThat(Math.abs(moved[what]))
                        .as("%s %d, %d", input, k, what)
                        .isLessThan(2.6);
                assertThat(what == 3 ? 0 : moved[what] * turned[what])
                        .as("%s %d, %d", input, k, what)
                        .isGreaterThan(-1e-3);
                turned[what] = Math.abs(moved[what]) > 0.02 ? Math.signum(moved[what]) : turned[what];
            }
            last = next;
        }
    }

    private static EveningTube swept(String input, double share) {
        return switch (input) {
            case "friction" -> EVENING.friction(0.15 + 0.65 * share);
            case "leg" -> EVENING.shorterLeg(0.06 * share);
            case "rise" -> new EveningTube(0.4, 0.05, 0.06 + 0.12 * share, 0.046, 0, 1, 20);
            case "waist" -> new EveningTube(0.4, 0.05, 0.14, 0.12 * share, 0, 1, 20);
            case "elastic" -> EVENING.elastic(10 * share);
            case "width" -> new EveningTube(0.4, 0.05, 0.14, 0.046, 0, 0.95 + 0.15 * share, 20);
            default -> throw new IllegalArgumentException(input);
        };
    }

    /** Front and back the same: front and back settle the same, and nothing passes between the legs. */
    @Test
    void whatIsTheSameInFrontAndBehindSettlesTheSame() {
        Tube tube = even(EVENING.tube());
        Settled settled = Balance.settle(tube, tube.standing(350, 350));
        assertThat(settled.isSettled()).isTrue();
        assertThat(settled.passed()).isCloseTo(0, within(1e-9));
        for (int k = 0; k < settled.front().size(); k++) {
            assertThat(settled.front().get(k)).isCloseTo(settled.back().get(k), within(1e-9));
        }
    }

    @Test
    void turnedRoundItSettlesTurnedRound() {
        Tube tube = even(EVENING.tube());
        Pose squat = EVENING.squat();
        Pose turned =
                new Pose(squat.growth(), squat.skinBack(), squat.skinFront(), squat.riseBack(), squat.riseFront());
        Settled one = Balance.settle(tube, squat);
        Settled other = Balance.settle(tube, turned);
        assertThat(one.passed()).isCloseTo(-other.passed(), within(1e-3));
        assertThat(one.waist().front()).isCloseTo(other.waist().back(), within(1e-3));
        assertThat(one.waist().back()).isCloseTo(other.waist().front(), within(1e-3));
        assertThat(one.hem().pull()).isCloseTo(other.hem().pull(), within(1e-3));
    }

    private static Tube even(Tube tube) {
        return new Tube(
                tube.trunk(),
                tube.leg(),
                tube.restFront(),
                tube.restFront(),
                tube.trunkGirths(),
                tube.legGirths(),
                tube.cloth(),
                Optional.of(new Rise(50, 300, 300, 0.4)),
                tube.band(),
                tube.cuff());
    }

    @Test
    void runAgainItGivesTheSameToTheLastBit() {
        assertThat(squat(EveningTube.standard())).isEqualTo(squat(EveningTube.standard()));
    }

    @Tag("slow")
    @Test
    void aThousandGarmentsByChanceSettle() {
        RandomTubes tubes = new RandomTubes(new RandomStream(23), 6, 21);
        for (int garment = 0; garment < 1000; garment++) {
            Tube tube = tubes.tube();
            Pose standing = tubes.standing(tube);
            for (Settled settled : Balance.through(tube, List.of(standing, tubes.bent(tube), standing))) {
                assertThat(settled.isSettled()).as("garment %d", garment).isTrue();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1})
    void whatIsNoNumberIsToldAtTheDoor(double bad) {
        assertThatThrownBy(() -> new Ring(0, bad, 0.4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Ring(0, 400, bad)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tension.straight(bad)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rise(50, bad, 300, 0.4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Hoop(Tension.straight(1), 350, 60, 1, bad, 0.4, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Girths.of(List.of(0.0, 1.0), List.of(300.0, bad)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EVENING.tube().standing(bad, 380)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPoseOfAnotherTubeIsToldAtTheDoor() {
        Pose other = EVENING.steps(10).standing();
        assertThatThrownBy(() -> Balance.settle(EVENING.tube(), other)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Balance.through(EVENING.tube(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Far too large for the body, without a boot: it ends, and says how. */
    @Test
    void whatNothingHoldsFalls() {
        Cloth cloth = new Cloth(Tension.straight(100), Tension.straight(200), 0.3);
        Settled settled = Balance.settle(
                PlainTube.of(500, 480, 0, cloth, 0.4).weight(5).tube(),
                PlainTube.of(500, 480, 0, cloth, 0.4).standing());
        assertThat(settled.outcome()).isEqualTo(Settled.Outcome.FALLS);
    }
}
