package stretchwright.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** How hard cloth pulls on a body, by what was read of its strips. */
class AsWornTest {
    private static final OptionalDouble NOT_READ = OptionalDouble.empty();

    private static LoadCurve straight(double at) {
        return LoadCurve.through(List.of(new LoadCurve.Reading(0.2, 0.2 * at), new LoadCurve.Reading(0.4, 0.4 * at)));
    }

    private static Fabric cloth(LoadCurve across, LoadCurve along, Hung.Way way) {
        return SampleFabric.heavyKnit()
                .with(new Fabric.Test(
                        0.60,
                        0.60,
                        across,
                        along,
                        NOT_READ,
                        NOT_READ,
                        NOT_READ,
                        Fabric.Assumed.NOTHING,
                        new Hung(way, Hung.Way.NOTHING)));
    }

    private static Hung.Way narrows(double by) {
        return new Hung.Way(OptionalDouble.of(by), NOT_READ, NOT_READ);
    }

    /** To the last bit, however it lies along: readings along alone tell nothing without the narrowing. */
    @Test
    void withNothingReadItIsTheStripItself() {
        LoadCurve across = straight(500);
        AsWorn worn = AsWorn.of(cloth(across, straight(900), Hung.Way.NOTHING), 0.05);
        for (double e = -0.1; e < 0.6; e += 0.01) {
            assertThat(worn.tension(e)).isEqualTo(across.tension(e));
        }
        assertThat(worn.extension(70)).isEqualTo(across.extension(70));
        assertThat(worn.known()).isEqualTo(CurveSpread.of(across));
    }

    /** By hand: 500 N/m a share, nu 0.4, a strip along twice as hard: held it is 1000 / (1 - 0.16 x 2). */
    @Test
    void heldAlongItPullsAsTheBalanceHasIt() {
        AsWorn worn = AsWorn.of(cloth(straight(500), straight(1000), narrows(0.4)), 0.05);
        double held = 1000 / (1 - 0.16 * 2);
        double free = 500 * 0.10 + 0.4 * held * (0.05 + 0.4 * 0.10);
        assertThat(worn.tension(0.10)).isCloseTo(0.77 * free, within(1e-9));
    }

    /** As firm a strip along as across is taken where none was hung; a cloth that stretches less along is firmer there. */
    @Test
    void withoutAStripAlongTheStretchesTell() {
        LoadCurve across = straight(500);
        double unread = AsWorn.of(cloth(across, LoadCurve.assumed(0.6), narrows(0.3)), 0.05)
                .tension(0.1);
        assertThat(unread)
                .isCloseTo(AsWorn.of(cloth(across, across, narrows(0.3)), 0.05).tension(0.1), within(1e-9));
        Fabric firm = cloth(across, LoadCurve.assumed(0.6), narrows(0.3));
        firm = firm.with(firm.test().with(0.60, 0.30, across, LoadCurve.assumed(0.3)));
        assertThat(AsWorn.of(firm, 0.05).tension(0.1)).isGreaterThan(unread);
    }

    /** The usual way back and half hour change nothing; half of the way back is half of the pull. */
    @Test
    void wornItPullsAsTheWayBackSays() {
        LoadCurve across = straight(500);
        LoadCurve along = LoadCurve.assumed(0.6);
        Hung.Way usual = new Hung.Way(NOT_READ, OptionalDouble.of(0.77 / 0.92), OptionalDouble.of(0.92));
        assertThat(AsWorn.of(cloth(across, along, usual), 0).tension(0.1)).isCloseTo(50, within(1e-9));
        Hung.Way half = new Hung.Way(NOT_READ, OptionalDouble.of(0.77 / 0.92 / 2), NOT_READ);
        AsWorn worn = AsWorn.of(cloth(across, along, half), 0);
        assertThat(worn.tension(0.1)).isCloseTo(25, within(1e-9));
        assertThat(worn.extension(25)).isCloseTo(0.1, within(1e-9));
    }

    /** The more a strip narrows, the harder it pulls where it may not; and less reckoned in full than a usual strip alone. */
    @Test
    void theUsualTwoNearlyCancel() {
        LoadCurve across = straight(500);
        double before = 0;
        for (double nu = 0; nu < 1.5; nu += 0.1) {
            double tension = AsWorn.of(cloth(across, LoadCurve.assumed(0.6), narrows(nu)), 0.04)
                    .tension(0.15);
            assertThat(tension).isGreaterThanOrEqualTo(before);
            before = tension;
        }
        double usual = AsWorn.of(cloth(across, LoadCurve.assumed(0.6), narrows(0.3)), 0.04)
                .tension(0.15);
        assertThat(usual / 75).isBetween(0.85, 1.0);
    }

    /** Whatever was read, more stretch pulls harder, and the way back to the strain is found. */
    @Test
    void itRisesAndCanBeTurnedRound() {
        for (int i = 0; i < 300; i++) {
            RandomStream r = RandomStream.of(i, "as worn");
            LoadCurve across = straight(r.between(50, 3000));
            LoadCurve along = r.below(2) == 0
                    ? LoadCurve.assumed(r.between(0.1, 1.2))
                    : LoadCurve.through(List.of(new LoadCurve.Reading(r.between(0.05, 1), r.between(20, 300))));
            Hung.Way way = new Hung.Way(
                    OptionalDouble.of(r.between(0, 1.5)),
                    OptionalDouble.of(r.between(0.4, 1)),
                    OptionalDouble.of(r.between(0.5, 1)));
            AsWorn worn = AsWorn.of(cloth(across, along, way), r.between(-0.05, 0.15));
            assertThat(worn.tension(-0.01)).isZero();
            assertThat(worn.tension(0)).isZero();
            for (double e = 0.01; e < 0.6; e += 0.01) {
                assertThat(worn.tension(e)).isGreaterThan(worn.tension(e - 0.01));
                assertThat(worn.extension(worn.tension(e))).isCloseTo(e, within(1e-6));
            }
        }
    }
}
