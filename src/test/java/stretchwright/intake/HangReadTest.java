package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Hung;
import stretchwright.fabric.LoadCurve;

/** Hanging strips in the make file: what they give, and the readings that cannot be. */
class HangReadTest {
    private static final String ACROSS = "  stretch across: 60 %\n";
    private static final String LOAD = "  load across: [[20 %, 3.1 N], [40 %, 6.9 N], [60 %, 13 N]]\n";
    private static final String HANG = "  hang across: [112 mm, 125 mm, 148 mm]\n";

    /** The sample with other lines in place of its load curve across. */
    private static String with(String lines) {
        return SampleText.with(LOAD, lines);
    }

    private static Fabric.Test test(String text) {
        return read(text).fabric().test();
    }

    /** By hand: 100 g on 50 mm pull with 0.0980665 x 10 / 0.05 = 19.61 N/m; 112 of 100 mm are 12 %. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "[112 mm, 125 mm, 148 mm]",
                "[11.2, 12.5, 14.8]",
                "[[100 g, 112 mm], [250 g, 125 mm], [500 g, 148 mm]]",
                "[100 g = 112 mm, 250 g = 12.5, 0.5 kg = 148 mm]"
            })
    void lengthsUnderWeightsAreALoadCurve(String lengths) {
        LoadCurve curve = test(with("  hang across: " + lengths + "\n")).loadAcross();
        assertThat(curve.isAssumed()).isFalse();
        assertThat(curve.readings()).hasSize(3);
        assertThat(curve.tension(0.12)).isCloseTo(19.6133, within(1e-4));
        assertThat(curve.tension(0.25)).isCloseTo(49.0333, within(1e-3));
        assertThat(curve.tension(0.48)).isCloseTo(98.0665, within(1e-3));
    }

    @Test
    void fewerReadingsWithTheirWeightAreEnough() {
        assertThat(test(with("  hang across: [[500 g, 148 mm]]\n")).loadAcross().readings())
                .hasSize(1);
        assertThat(test(with("  hang across: 500 g = 148 mm\n")).loadAcross().tension(0.48))
                .isCloseTo(98.0665, within(1e-3));
        assertThat(only(with("  hang across: 148 mm\n")).line())
                .contains("fabric.hang across", "100 g, 250 g, 500 g", "each with its weight");
        assertThat(only(with("  hang across: [112 mm, 148 mm]\n")).line()).contains("without a weight");
    }

    /** Where no easy pull was read, 500 g stand for one; where one was, it stays the stretch. */
    @Test
    void fiveHundredGramsStandForAnEasyPull() {
        assertThat(test(with(HANG)).stretchAcross()).isEqualTo(0.6);
        Fabric.Test hung = test(with(HANG).replace(ACROSS, ""));
        assertThat(hung.stretchAcross()).isCloseTo(0.48, within(1e-9));
        assertThat(hung.assumed()).isEqualTo(Fabric.Assumed.NOTHING);
        assertThat(only(with("  hang across: [[100 g, 112 mm]]\n").replace(ACROSS, ""))
                        .line())
                .contains("fabric.hang across", "500 g", "stretch across");
        assertThat(test(with("  hang along: [108 mm, 118 mm, 134 mm]\n")
                                .replace("  stretch along: 45 %\n", "")
                                .replace("  load along:  [[20 %, 4.0 N], [40 %, 9.5 N]]\n", ""))
                        .stretchAlong())
                .isCloseTo(0.34, within(1e-9));
    }

    @Test
    void aFoldTestAloneStaysEnough() {
        Fabric.Test fold = test(with("").replace(ACROSS, "  fold across: [100 mm, 160 mm, 102 mm]\n")
                .replace("  recovery: 95 %\n", ""));
        assertThat(fold.loadAcross().isAssumed()).isTrue();
        assertThat(fold.hung()).isEqualTo(Hung.NOTHING);
    }

    /**
     * By hand: 43 of 50 mm are 14 % off where 48 % were gained: 0.2917. On the way back 131 mm under 250 g and 116 mm under
     * 100 g; after half an hour 151 mm, where the curve goes on straight.
     */
    @Test
    void theStripTellsMoreThanItsCurve() {
        Fabric.Test test = test(
                with(HANG + "  strip: {width across: 43 mm, back across: [131 mm, 116 mm], after 30 min: 151 mm}\n"));
        LoadCurve out = test.loadAcross();
        Hung.Way way = test.hung().across();
        assertThat(way.narrowing().orElseThrow()).isCloseTo(0.14 / 0.48, within(1e-9));
        double back = Math.sqrt(49.0333 / out.tension(0.31) * 19.6133 / out.tension(0.16));
        assertThat(way.wayBack().orElseThrow()).isCloseTo(back, within(1e-5)).isBetween(0.62, 0.92);
        assertThat(way.relaxed().orElseThrow())
                .isCloseTo(98.0665 / out.tension(0.51), within(1e-5))
                .isBetween(0.85, 0.99);
        assertThat(test.hung().along()).isEqualTo(Hung.Way.NOTHING);
        assertThat(read(with(HANG + "  strip: {width across: 43 mm}\n"))
                        .fabric()
                        .turned()
                        .test()
                        .hung()
                        .along()
                        .narrowing())
                .isPresent();
    }

    /** The way back may also be held against readings at a stretch. */
    @Test
    void besideALoadCurveTheStripTellsTheRest() {
        Hung.Way way = test(with(LOAD + "  strip: {width across: 44 mm, back across: [[250 g, 122 mm]]}\n"))
                .hung()
                .across();
        assertThat(way.narrowing()).isPresent();
        assertThat(way.wayBack()).isPresent();
    }

    @Test
    void twoWaysOfSayingTheSameAreAFinding() {
        assertThat(only(SampleText.with(LOAD, LOAD + HANG)).line())
                .contains("fabric.hang across", "load across", "Leave one of them out");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[[250 g, 125 mm], [100 g, 112 mm]] | hangs no heavier | from light to heavy",
                "[[100 g, 112 mm], [100 g, 113 mm]] | hangs no heavier | from light to heavy",
                "[112 mm, 112 mm, 148 mm] | reading 2 (11.2 cm under 250 g) is no longer | Hang it again",
                "[112 mm, 148 mm, 125 mm] | reading 3 | Hang it again",
                "[98 mm, 125 mm, 148 mm] | not longer than the marks | between the marks",
                "[112 mm, 125 mm, 500 mm] | out of range | 2 cm to 40 cm",
                "[[-100 g, 112 mm]] | negative | 200 N",
                "[[100 g, 112 mm], [250 g]] | no list of lengths under weights | hang across",
                "[[100 g, 250 g]] | no list of lengths under weights | hang across",
                "{a: 1} | no list of lengths under weights | hang across",
                "[] | 0 readings | Give 1 to",
                "[[100 g, x]] | is not a length | Write",
                "[112, 125, 148] | out of range | Is 112 mm meant"
            })
    void weightsAndLengthsThatCannotBeAreFindings(String lengths, String wrong, String right) {
        assertThat(only(with("  hang across: " + lengths + "\n")).line())
                .contains("fabric.hang across", wrong)
                .contains(right);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "back across: [150 mm, 116 mm] | back across | more than the strip came to on the way out",
                "back across: [[750 g, 140 mm]] | back across | more than the strip came to",
                "back across: [120 mm, 108 mm] | back across | shorter than on the way out",
                "back across: [131 mm, 98 mm] | back across | not longer than the marks",
                "back across: [[100 g, 116 mm], [250 g, 131 mm]] | back across | hangs no lighter",
                "back across: [147 mm, 146 mm] | back across | of the pull would be left",
                "width across: 53 mm | width across | wider than the",
                "width across: 5 mm | width across | narrowing of 188 %",
                "width across: -3 mm | width across | negative",
                "width across: 300 mm | width across | out of range",
                "after 30 min: 140 mm | after 30 min | shorter than the",
                "after 30 min: 300 mm | after 30 min | no cloth for legs creeps"
            })
    void whatTheStripCannotTellIsAFinding(String strip, String key, String wrong) {
        assertThat(only(with(HANG + "  strip: {" + strip + "}\n")).line()).contains("fabric.strip." + key, wrong);
    }

    @Test
    void theStripNeedsTheReadingsItIsHeldAgainst() {
        assertThat(only(with("  strip: {width across: 43 mm}\n")).line())
                .contains("fabric.strip.width across", "length under 500 g", "hang across: [");
        assertThat(only(with("  hang across: [[250 g, 125 mm]]\n  strip: {width across: 43 mm}\n"))
                        .line())
                .contains("length under 500 g");
        assertThat(only(with("  strip: {back across: [131 mm, 116 mm]}\n")).line())
                .contains("on the way out");
        assertThat(only(with("  strip: {colour: ink}\n")).line()).contains("fabric.strip.colour", "not a key");
    }

    /** The cloth goes to 60 % easily: one that 500 g stretch by 3 % does not, nor one that 100 g stretch by 150 %. */
    @Test
    void readingsOfAnotherClothAreAFinding() {
        assertThat(only(with("  hang across: [100.5 mm, 101.5 mm, 103 mm]\n")).line())
                .contains("fabric.hang across", "60 %", "an easy pull is", "another cloth");
        assertThat(only(with("  hang across: [250 mm, 320 mm, 390 mm]\n").replace(ACROSS, "  stretch across: 25 %\n"))
                        .line())
                .contains("25 %", "another cloth");
    }
}
