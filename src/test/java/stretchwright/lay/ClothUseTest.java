package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style;

/** The sum to buy, the cloth at hand, the widths in the shop. */
class ClothUseTest {
    private static final List<Piece> PIECES = SamplePattern.overBoot().pieces();

    static Fabric cloth(OptionalDouble onHand, double shrinkage, double repeat, boolean oneWay) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, shrinkage),
                new Fabric.Roll("printed knit", 1470, onHand, oneWay, repeat, Optional.empty(), ClothShape.WHOLE),
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

    /** By hand: 980 / 0.98 is 20 more; 2 x 50; 64: 1164, in steps of 50 mm 1200, in eighths of 114.3 mm 11 = 1257.3. */
    @Test
    void theSumAddsUp() {
        Fabric fabric = cloth(OptionalDouble.empty(), 0.02, 64, true);
        Buying metric = Buying.of(980, fabric, Buying.Counter.METRIC);
        assertThat(metric.shrinkage()).isCloseTo(20, within(1e-9));
        assertThat(metric.straightening()).isEqualTo(100);
        assertThat(metric.repeat()).isEqualTo(64);
        assertThat(metric.needed()).isCloseTo(1164, within(1e-9));
        assertThat(metric.bought()).isEqualTo(1200);
        Buying yards = Buying.of(980, fabric, Buying.Counter.YARDS);
        assertThat(yards.steps()).isEqualTo(11);
        assertThat(yards.bought()).isCloseTo(1257.3, within(1e-9));
    }

    /** Rounded once: 1255 mm are 11 eighths (1257.3 mm), not the 12 that 1300 mm would be. */
    @Test
    void yardsAreNotRoundedFromMetres() {
        Buying yards = Buying.of(1155, cloth(OptionalDouble.empty(), 0, 0, true), Buying.Counter.YARDS);
        assertThat(yards.steps()).isEqualTo(11);
    }

    private static OnHand onHand(double have, double shrinkage, double repeat, Style.LayWay way, boolean oneWay) {
        Fabric fabric = cloth(OptionalDouble.of(have), shrinkage, repeat, oneWay);
        Lay lay = LayingTest.lay(PIECES, fabric, way);
        return OnHand.of(lay, PIECES, fabric, LayTerms.of(way), 1, LayClock.NONE)
                .orElseThrow();
    }

    private static double needed(double shrinkage, double repeat, Style.LayWay way) {
        Fabric fabric = cloth(OptionalDouble.empty(), shrinkage, repeat, true);
        return Shop.needed(LayingTest.lay(PIECES, fabric, way).length(), fabric);
    }

    @Tag("slow")
    @Test
    void enoughToTheMillimetreFits() {
        double needed = needed(0.02, 0, Style.LayWay.ANY);
        OnHand just = onHand(needed, 0.02, 0, Style.LayWay.ANY, true);
        assertThat(just.verdict()).isEqualTo(OnHand.Verdict.FITS);
        assertThat(just.spare()).isCloseTo(0, within(1e-9));
        assertThat(onHand(needed + 37, 0.02, 0, Style.LayWay.ANY, true).spare()).isCloseTo(37, within(0.01));
    }

    @Tag("slow")
    @Test
    void halfOfWhatIsNeededFitsUnderNoCondition() {
        double needed = needed(0.02, 0, Style.LayWay.ANY);
        OnHand half = onHand(needed / 2, 0.02, 0, Style.LayWay.ANY, true);
        assertThat(half.verdict()).isEqualTo(OnHand.Verdict.SHORT);
        assertThat(half.spare()).isCloseTo(-needed / 2, within(0.01));
    }

    @Tag("slow")
    @Test
    void aLittleShortFitsIfTheEndsAreStraightOrItIsWashed() {
        double needed = needed(0.05, 64, Style.LayWay.ANY);
        OnHand little = onHand(needed - 20, 0.05, 64, Style.LayWay.ANY, true);
        assertThat(little.verdict()).isEqualTo(OnHand.Verdict.FITS_IF);
        assertThat(little.conditions())
                .extracting(OnHand.Condition::what)
                .contains(OnHand.If.ENDS_STRAIGHT, OnHand.If.WASHED, OnHand.If.PRINT_NOT_SHIFTED);
    }

    /** The other way of laying and turning are tried by laying, and only said where they are short enough. */
    @Tag("slow")
    @Test
    void whatIsTriedHoldsWhenItIsDone() {
        double folded = needed(0, 0, Style.LayWay.FOLDED);
        double any = needed(0, 0, Style.LayWay.ANY);
        OnHand at = onHand(folded - 1, 0, 0, Style.LayWay.FOLDED, true);
        boolean said = at.conditions().stream().anyMatch(c -> c.what() == OnHand.If.LAID_ANOTHER_WAY);
        assertThat(said).isEqualTo(any <= folded - 1);
        Fabric either = cloth(OptionalDouble.empty(), 0, 0, false);
        double turned =
                Shop.needed(LayingTest.lay(PIECES, either, Style.LayWay.FOLDED).length(), either);
        boolean turnedSaid = at.conditions().stream().anyMatch(c -> c.what() == OnHand.If.PIECES_TURNED);
        assertThat(turnedSaid).isEqualTo(turned <= folded - 1);
    }

    @Test
    void nothingAtHandIsNoVerdict() {
        Fabric fabric = cloth(OptionalDouble.empty(), 0, 0, true);
        assertThat(OnHand.of(
                        LayingTest.lay(PIECES, fabric, Style.LayWay.ANY),
                        PIECES,
                        fabric,
                        LayTerms.of(Style.LayWay.ANY),
                        1,
                        LayClock.NONE))
                .isEmpty();
    }

    /** The own width is laid as the make lays it, the others by its two plainest ways: 3 % above the lay at most. */
    @Tag("slow")
    @Test
    void theWidthsAreLaidNotGuessed() {
        Fabric fabric = cloth(OptionalDouble.empty(), 0.02, 0, true);
        ClothWidths widths =
                ClothWidths.of(PIECES, fabric, LayTerms.of(Style.LayWay.ANY), 1, Buying.Counter.METRIC, LayClock.NONE);
        assertThat(widths.rows()).extracting(ClothWidths.Row::width).containsExactly(1470.0, 1400.0, 1600.0);
        for (ClothWidths.Row row : widths.rows()) {
            Lay lay = LayingTest.lay(PIECES, fabric.with(row.width(), true), Style.LayWay.ANY);
            Buying oneWay = row.oneWay().orElseThrow();
            if (row.own()) {
                assertThat(oneWay.length()).isEqualTo(lay.length());
            }
            assertThat(oneWay.length()).isBetween(lay.floor(), 1.03 * lay.length());
            assertThat(row.turned().orElseThrow().needed()).isLessThanOrEqualTo(oneWay.needed());
        }
    }

    /** Of generated garments: wider cloth never asks for more; where the way is given, what is told is the lay that is made. */
    @Tag("slow")
    @Test
    void widerClothNeverAsksForMore() {
        SampleMakes.all().parallelStream().forEach(make -> {
            ClothWidths widths = ClothWidths.of(
                    make.pieces(), make.fabric(), LayTerms.of(make.way()), 1, Buying.Counter.METRIC, LayClock.NONE);
            double narrow = widths.rows().get(1).turned().orElseThrow().length();
            double wide = widths.rows()
                    .get(widths.rows().size() - 1)
                    .turned()
                    .orElseThrow()
                    .length();
            assertThat(wide).as(make.name()).isLessThanOrEqualTo(narrow);
            assertThat(Laying.estimate(make.pieces(), make.fabric(), LayTerms.of(make.way()), 1))
                    .as(make.name())
                    .hasValue(make.lay().length());
        });
    }

    /** At three widths, one-way and turned: no more than 3 % above what the lay of any way comes to, and never below its floor. */
    @Tag("slow")
    @Test
    void whatIsToldBeforeBuyingIsWithinThreePerCentOfTheLay() {
        for (SampleMakes make : SampleMakes.all().subList(0, 2)) {
            for (double width : new double[] {1400, 1470, 1600}) {
                for (boolean oneWay : new boolean[] {true, false}) {
                    Fabric fabric = make.fabric().with(width, oneWay);
                    Lay lay = LayingTest.lay(make.pieces(), fabric, Style.LayWay.ANY);
                    assertThat(Laying.estimate(make.pieces(), fabric, LayTerms.of(Style.LayWay.ANY), 1)
                                    .orElseThrow())
                            .as("%s on %.0f mm, one way %s", make.name(), width, oneWay)
                            .isBetween(lay.floor(), 1.03 * lay.length());
                }
            }
        }
    }

    /** A grain that may stand off is made use of before buying too. */
    @Tag("slow")
    @Test
    void theGrainToleranceCountsBeforeBuying() {
        Fabric fabric = cloth(OptionalDouble.empty(), 0, 0, true);
        LayTerms tilted = new LayTerms(Style.LayWay.OPEN, 0, 2, Optional.empty());
        assertThat(Laying.estimate(PIECES, fabric, tilted, 1))
                .hasValue(Laying.lay(PIECES, fabric, tilted, 1, new Findings("test"))
                        .orElseThrow()
                        .length());
    }

    @Tag("slow")
    @Test
    void ownWidthNearACommonOneIsToldOnceBesideTwoOthersAndATooNarrowClothHasNoLength() {
        Fabric common = cloth(OptionalDouble.empty(), 0, 0, true).with(1603, true);
        assertThat(ClothWidths.of(
                                PIECES, common, LayTerms.of(Style.LayWay.ANY), 1, Buying.Counter.METRIC, LayClock.NONE)
                        .rows())
                .extracting(ClothWidths.Row::width)
                .containsExactly(1603.0, 1400.0, 1500.0);
        Fabric narrow = common.with(300, true);
        ClothWidths.Row row = ClothWidths.of(
                        PIECES, narrow, LayTerms.of(Style.LayWay.ANY), 1, Buying.Counter.METRIC, LayClock.NONE)
                .rows()
                .get(0);
        assertThat(row.oneWay()).isEmpty();
        assertThat(row.turned()).isEmpty();
    }
}
