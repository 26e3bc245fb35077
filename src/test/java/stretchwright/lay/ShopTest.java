package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;

class ShopTest {
    /** W19 of the trade values, by hand: 1.30 m is 1.4217 yd of 914.4 mm, so 12 eighths (1 1/2 yd); in steps of 50 mm it is 1.30 m. */
    @Test
    void aNeedIsRoundedUpToWhatShopsSell() {
        assertThat(1300 / 914.4).isCloseTo(1.4217, within(0.0001));
        assertThat(Shop.eighths(1300)).isEqualTo(12);
        assertThat(Shop.metric(1300)).isEqualTo(1300);
        assertThat(Shop.metric(1300.01)).isEqualTo(1350);
        assertThat(Shop.eighths(12 * 114.3)).isEqualTo(12);
        assertThat(Shop.eighths(12 * 114.3 + 0.01)).isEqualTo(13);
    }

    /** By hand: 980 / 0.98 = 1000, and 50 at each end. */
    @Test
    void shrinkageAndStraighteningAreAdded() {
        assertThat(Shop.needed(980, SampleFabric.heavyKnit())).isCloseTo(1100, within(1e-9));
    }

    /** W20 of the trade values, by hand: 1000 mm that are to be left after 5 % along are cut 1052.6, after 3 % 1030.9. */
    @Test
    void w20ShrinkageIsBoughtOnTop() {
        double ends = 2 * Shop.STRAIGHTENING;
        assertThat(Shop.needed(1000, cloth(0.05, 0)) - ends).isCloseTo(1052.6, within(0.05));
        assertThat(Shop.needed(1000, cloth(0.03, 0)) - ends).isCloseTo(1030.9, within(0.05));
    }

    /** By hand: 980 / 0.98 + 100 + 64. */
    @Test
    void aPrintedClothAddsOneRepeat() {
        assertThat(Shop.needed(980, cloth(0.02, 64))).isCloseTo(1164, within(1e-9));
    }

    @Test
    void clothThatShrinksToNothingIsRefused() {
        assertThatThrownBy(() -> Shop.needed(980, cloth(1, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shrinkage");
    }

    private static Fabric cloth(double shrinkage, double repeat) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, shrinkage),
                new Fabric.Roll(
                        "printed knit", 1470, OptionalDouble.empty(), true, repeat, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        0.6,
                        0.4,
                        LoadCurve.assumed(0.6),
                        LoadCurve.assumed(0.4),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }
}
