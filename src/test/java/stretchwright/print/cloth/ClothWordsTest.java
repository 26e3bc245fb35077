package stretchwright.print.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Unit;
import stretchwright.lay.Buying;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;
import stretchwright.lay.Lay;
import stretchwright.lay.Leftover;
import stretchwright.lay.OnHand;
import stretchwright.pattern.Names;
import stretchwright.print.kit.SampleJob;

/** The cloth in sentences. */
class ClothWordsTest {
    private static Buying buying(Unit unit) {
        return Buying.of(1196.9, SampleFabric.heavyKnit(), Buying.Counter.of(unit));
    }

    /** What stands before the equals sign adds up to what stands behind it, in every unit, digit for digit. */
    @ParameterizedTest
    @EnumSource(
            value = Unit.class,
            names = {"MM", "CM", "IN"})
    void theSumAddsUpAsItIsWritten(Unit unit) {
        for (double length = 900; length < 1400; length += 7.3) {
            String words = ClothWords.sum(Buying.of(length, SampleFabric.heavyKnit(), Buying.Counter.of(unit)), unit);
            String[] sides = words.split(" = ");
            double sum = 0;
            for (String term : sides[0].split(" \\+ ")) {
                sum += written(term, unit) * (term.contains("2 x ") ? 2 : 1);
            }
            double needed = written(sides[1], unit);
            assertThat(Math.abs(sum - needed)).as(words).isLessThan(1e-6);
        }
    }

    /** "30.5 cm", "40 1/16 in": the number before the unit. */
    private static double written(String term, Unit unit) {
        Matcher m = Pattern.compile("([0-9.]+)(?: ([0-9]+)/([0-9]+))? " + unit.symbol())
                .matcher(term.replaceAll("\\b([0-9]+/[0-9]+ " + unit.symbol() + ")", "0 $1")
                        .replaceAll("([0-9]+) 0 ([0-9]+/)", "$1 $2"));
        assertThat(m.find()).as(term).isTrue();
        double parts = m.group(2) == null ? 0 : Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3));
        return Double.parseDouble(m.group(1)) + parts;
    }

    @Test
    void metresForTheMetricAndEighthsOfAYardForInches() {
        assertThat(ClothWords.sum(buying(Unit.CM), Unit.CM))
                .contains("in steps of 5 cm: ")
                .endsWith(" m");
        assertThat(ClothWords.sum(buying(Unit.IN), Unit.IN))
                .contains("in eighths of a yard: ")
                .endsWith(" yd");
    }

    @Test
    void clothOnHandIsToldInTheMakersUnitAndNeverTooKindly() {
        assertThat(ClothWords.onHand(new OnHand(1500, 1321.4, List.of()), Unit.CM))
                .isEqualTo("fits, 17.8 cm to spare");
        assertThat(ClothWords.onHand(new OnHand(1300, 1321.4, List.of()), Unit.CM))
                .isEqualTo("does not fit: 2.2 cm short");
        assertThat(ClothWords.onHand(
                        new OnHand(
                                1300,
                                1321.4,
                                List.of(new OnHand.Condition(OnHand.If.ENDS_STRAIGHT, Lay.Method.OPEN, 1221.3))),
                        Unit.IN))
                .isEqualTo("is 7/8 in short, but fits if both cut ends are straight already (48 1/8 in needed)");
    }

    private static CuttingGuide.Step step(Hand hand, boolean over, boolean down, boolean fold, int layers) {
        return new CuttingGuide.Step(
                1,
                Names.piece("leg"),
                1,
                hand,
                over,
                down,
                fold,
                layers,
                fold ? 1 : layers,
                List.of(254.0, 254.0),
                0,
                List.of());
    }

    @Test
    void aFoldedLaySaysWhichLayerIsWhichSide() {
        Lay lay = SampleJob.foldedLay();
        assertThat(ClothWords.step(step(Hand.PAIR, false, false, false, 2), lay, Unit.CM))
                .contains("upper one gives the left, the lower one the right", "25.4 cm at both ends from the fold");
        assertThat(ClothWords.step(step(Hand.EITHER, false, false, true, 2), lay, Unit.IN))
                .contains("exactly on the fold", "one whole piece", "10 in at both ends");
        assertThat(ClothWords.before(SampleJob.folded().laid()).get(0)).contains("OUTSIDE OUT");
    }

    /** Legs of different size are no pair: each is cut from the upper layer alone, and for one side. */
    @Test
    void aLegThroughOneLayerOfFoldedClothIsCutFromTheUpperOne() {
        CuttingGuide.Step one = step(Hand.LEFT, false, true, false, 1);
        assertThat(ClothWords.step(one, SampleJob.foldedLay(), Unit.CM))
                .contains("upper layer only", "top towards the near end")
                .doesNotContain("both layers");
        assertThat(ClothWords.side(one)).isEqualTo("this side up, top down");
    }

    /** By hand: a piece 1005 mm from the near end lies 5 mm from the cut, once the first metre is cut off. */
    @Test
    void onTheOpenStretchOfPartFoldedClothTheCutIsTheNearEnd() {
        Lay open = SampleJob.openLay();
        Lay part = new Lay(Lay.Method.PART_FOLDED, 1470, 1500, 1600, 0.5, 1000, 1000, open.placements(), List.of());
        CuttingGuide.Step step = new CuttingGuide.Step(
                1,
                Names.piece("leg"),
                1,
                Hand.EITHER,
                false,
                false,
                false,
                1,
                1,
                List.of(254.0, 254.0),
                1005,
                List.of());
        assertThat(ClothWords.step(step, part, Unit.MM)).contains("5 mm from where the cloth was cut across");
        assertThat(ClothWords.step(step, open, Unit.MM)).contains("1005 mm from the near end");
    }

    @Test
    void anOpenLaySpeaksOfNoLayers() {
        String over = ClothWords.step(step(Hand.RIGHT, true, false, false, 1), SampleJob.openLay(), Unit.CM);
        assertThat(over)
                .contains("printed side DOWN", "left edge", "from the near end")
                .doesNotContain("layer");
        assertThat(ClothWords.before(SampleJob.on("a4").laid()).get(0)).contains("OUTSIDE UP");
    }

    @Test
    void namesSaySideOrNumberOnlyWhereThereIsOne() {
        assertThat(ClothWords.name(step(Hand.LEFT, false, false, false, 1), 2)).isEqualTo("leg L");
        assertThat(ClothWords.name(step(Hand.EITHER, false, false, false, 1), 2))
                .isEqualTo("leg 1");
        assertThat(ClothWords.name(step(Hand.EITHER, false, false, false, 1), 1))
                .isEqualTo("leg");
    }

    @Test
    void leftoversSaySizeAndLayers() {
        assertThat(ClothWords.leftover(new Leftover(0, 0, 254, 508, 2, true), 'B', Unit.IN))
                .isEqualTo("B: 10 in across x 20 in along, two layers, at the fold");
        assertThat(ClothWords.leftover(new Leftover(0, 0, 254, 508, 1, false), 'A', Unit.CM))
                .isEqualTo("A: 25.4 cm across x 50.8 cm along");
    }
}
