package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.body.PoseLength;
import stretchwright.fabric.Fabric;

/** Home tests of a cloth in the make file: what they give, and the readings that cannot be. */
class ClothReadTest {
    private static final String ACROSS = "  stretch across: 60 %\n";
    private static final String ALONG = "  stretch along: 45 %\n";

    private static String with(String old, String now) {
        return SampleText.with(old, now);
    }

    private static String posed(String lengths, String along) {
        return with(ALONG, along).replace("  figure: woman\n", "  figure: woman\n  pose lengths: " + lengths + "\n");
    }

    @Test
    void aFoldStandsForStretchAndRecovery() {
        Fabric cloth = read(with(ACROSS, "  fold across: [100 mm, 160 mm, 102.5 mm]\n")
                        .replace("  recovery: 95 %\n", ""))
                .fabric();
        assertThat(cloth.test().stretchAcross()).isCloseTo(0.6, within(1e-9));
        assertThat(cloth.test().recovery().orElseThrow()).isCloseTo(0.958333, within(1e-6));
        assertThat(cloth.test().assumed()).isEqualTo(Fabric.Assumed.NOTHING);
    }

    @Test
    void ofTwoFoldsTheOneThatComesBackLessSaysTheRecovery() {
        Fabric cloth = read(with(ACROSS, "  fold across: [10, 16, 10.25]\n")
                        .replace(ALONG, "  fold along: [10, 14, 10.4]\n")
                        .replace("  recovery: 95 %\n", ""))
                .fabric();
        assertThat(cloth.test().stretchAlong()).isCloseTo(0.4, within(1e-9));
        assertThat(cloth.test().recovery().orElseThrow()).isCloseTo(0.9, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[10, 16, 9.9] | shorter after the rest",
                "[10, 16, 16.1] | longer after the rest",
                "[10, 10, 10] | did not get longer",
                "[10, 16] | three lengths",
                "[10, 41, 11] | 310.0 %",
                "[0, 16, 10] | is zero",
                "[10, 16, 10.2, 10] | lists 4"
            })
    void aFoldThatCannotBeIsAFinding(String fold, String words) {
        assertThat(only(with(ACROSS, "  fold across: " + fold + "\n").replace("  recovery: 95 %\n", ""))
                        .line())
                .contains("fabric.fold across", words);
    }

    @Test
    void aFoldAndAShareThatDifferAreAFinding() {
        assertThat(only(with(ACROSS, ACROSS + "  fold across: [10, 17, 10.3]\n"))
                        .line())
                .contains("fabric.stretch across", "60.0 %", "70.0 %");
        assertThat(read(with(ACROSS, ACROSS + "  fold across: [10, 16.4, 10.3]\n"))
                        .fabric()
                        .test()
                        .stretchAcross())
                .isCloseTo(0.64, within(1e-9));
        assertThat(only(with(ACROSS, "  fold across: [10, 16, 12]\n")).line()).contains("fabric.recovery", "66.7 %");
    }

    @Test
    void aWrapGivesTheReductionAndAnAssumedStretch() {
        Fabric cloth = read(with(ACROSS, "  wrap hip: 84 cm\n")).fabric();
        double reduction = 1 - 84 / 96.1;
        assertThat(cloth.test().wrapped().orElseThrow()).isCloseTo(reduction, within(1e-9));
        assertThat(cloth.test().stretchAcross()).isCloseTo(4 * reduction / (1 - reduction), within(1e-9));
        assertThat(cloth.test().assumed()).isEqualTo(new Fabric.Assumed(true, false));
    }

    @Test
    void besideAMeasuredStretchAWrapAssumesNothing() {
        Fabric cloth = read(with(ACROSS, ACROSS + "  wrap hip: 84 cm\n")).fabric();
        assertThat(cloth.test().stretchAcross()).isEqualTo(0.6);
        assertThat(cloth.test().wrapped()).isPresent();
        assertThat(cloth.test().assumed()).isEqualTo(Fabric.Assumed.NOTHING);
    }

    @Test
    void aWrapNeedsLessThanTheGirthAndTheGirthMeasured() {
        assertThat(only(with(ACROSS, "  wrap hip: 97\n")).line()).contains("fabric.wrap hip", "not less");
        assertThat(only(with(ACROSS, "  wrap calf: 30\n")).line()).contains("fabric.wrap calf", "calf girth");
        assertThat(only(with(ACROSS, "  wrap hip: 40\n")).line()).contains("561.0 %");
    }

    @Test
    void lengthsThatTheClothReachedStandForTheStretchAlong() {
        String lengths = "{back waist to front waist: [70, 78], top of thigh to shin: [60, 72]}";
        MakeFile make = read(posed(lengths, "  reaches pose: true\n"));
        assertThat(make.measured().poseLengths())
                .containsExactly(
                        new PoseLength(PoseLength.Course.BACK_TO_FRONT, 700, 780),
                        new PoseLength(PoseLength.Course.THIGH_TO_SHIN, 600, 720));
        assertThat(make.fabric().test().stretchAlong()).isCloseTo(0.2, within(1e-9));
        assertThat(make.fabric().test().assumed()).isEqualTo(new Fabric.Assumed(false, true));
    }

    @Test
    void lengthsOfAPoseThatCannotBeAreFindings() {
        assertThat(only(posed("{top of thigh to shin: [60, 59]}", ALONG)).line())
                .contains("wearer.pose lengths.top of thigh to shin", "shorter in the pose");
        assertThat(only(posed("{top of thigh to shin: 60}", ALONG)).line()).contains("two lengths");
        assertThat(only(posed("{thigh to shin: [60, 72]}", ALONG)).line()).contains("top of thigh to shin");
        assertThat(only(with(ALONG, "  reaches pose: true\n")).line()).contains("fabric.reaches pose");
    }

    @Test
    void withoutAnyReadingTheStretchIsMissing() {
        assertThat(only(with(ACROSS, "")).line()).contains("fabric.stretch across", "is missing");
        assertThat(only(with(ALONG, "  reaches pose: false\n")).line()).contains("fabric.stretch along", "is missing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "recovery: 95 % | recovery: 140 % | out of range",
                "stretch across: 60 % | stretch across: 301 % | out of range",
                "shows through at: 75 % | shows through at: -5 % | negative",
                "[40 %, 6.9 N] | [40 %, 2.9 N] | does not grow",
                "[40 %, 6.9 N] | [15 %, 6.9 N] | does not grow"
            })
    void readingsThatCannotBeAreFindings(String old, String now, String words) {
        assertThat(findings(with(old, now)).get(0).line()).contains(words);
    }

    @Test
    void aCurveTakesOneToAHundredReadings() {
        String load = "  load along:  [[20 %, 4.0 N], [40 %, 9.5 N]]\n";
        assertThat(read(with(load, "  load along: [[20 %, 4.0 N]]\n"))
                        .fabric()
                        .test()
                        .loadAlong()
                        .readings())
                .hasSize(1);
        assertThat(only(with(load, "  load along: []\n")).line()).contains("0 readings");
        String many = IntStream.rangeClosed(1, 5_000)
                .mapToObj(i -> "[" + (1 + i * 0.01) + " %, " + i * 0.01 + " N]")
                .collect(Collectors.joining(", "));
        assertThat(only(with(load, "  load along: [" + many + "]\n")).line()).contains("5000 readings");
    }

    /** The pins cannot have pulled the cloth further than it stretches. */
    @Test
    void aWrapTighterThanTheClothStretchesIsAFinding() {
        String tight = with(ACROSS, ACROSS + "  wrap hip: 5\n");
        assertThat(only(tight).line()).contains("fabric.wrap hip", "60.0 %");
        assertThat(read(with(ACROSS, ACROSS + "  wrap hip: 84\n"))
                        .fabric()
                        .test()
                        .wrapped())
                .isPresent();
    }

    @Test
    void aPoseTwiceAsLongIsASlipOfTheTape() {
        assertThat(only(posed("{top of thigh to shin: [10, 300]}", ALONG)).line())
                .contains("wearer.pose lengths.top of thigh to shin", "more than twice");
    }

    /** Back waist to front waist through the legs is the total crotch length by another name. */
    @Test
    void aPoseTapeAtOddsWithTheCrotchLengthIsAFinding() {
        assertThat(read(posed("{back waist to front waist: [66, 75]}", ALONG)
                                .replace("  measurements:\n", "  measurements:\n    total crotch length: 70\n"))
                        .measured()
                        .poseLengths())
                .hasSize(1);
        assertThat(only(posed("{back waist to front waist: [40, 46]}", ALONG)
                                .replace("  measurements:\n", "  measurements:\n    total crotch length: 70\n"))
                        .line())
                .contains("back waist to front waist", "total crotch length");
    }
}
