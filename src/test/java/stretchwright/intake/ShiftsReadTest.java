package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.body.Stance;
import stretchwright.body.Variation;
import stretchwright.ground.Finding;
import stretchwright.pattern.Shift;

/** Points moved by hand, the figure by its words, the waist in front and behind: read, and refused where they contradict. */
class ShiftsReadTest {
    private static final String HIP = "hip girth: 96.1";

    @Test
    void shiftsAreReadInTheFilesUnit() {
        MakeFile make = read(SampleText.with("rise: waist", "shifts: {back crotch point: 0.6, side waist: -12 mm}"));
        assertThat(make.style().shifts().at(Shift.BACK_CROTCH_POINT)).isCloseTo(6, within(1e-9));
        assertThat(make.style().shifts().at(Shift.SIDE_WAIST)).isEqualTo(-12);
        assertThat(make.style().shifts().at(Shift.HEM)).isZero();
    }

    @Test
    void theWaistIsReadInFrontAndBehindAndTheFigureByItsWords() {
        Stance stance = read(SampleText.with(
                        HIP,
                        HIP
                                + "\n    waist height: 103\n    front waist height: [102, 102.4]\n    back waist height: 102.6\n"
                                + "  figure shifts: {swayed back: 1.2, bow legs: 5 mm}"))
                .measured()
                .stance();
        assertThat(stance.frontWaist().orElseThrow()).isCloseTo(1022, within(1e-9));
        assertThat(stance.backWaist().orElseThrow()).isEqualTo(1026);
        assertThat(stance.variations()).isEqualTo(Map.of(Variation.SWAYED_BACK, 12.0, Variation.BOW_LEGS, 5.0));
        assertThat(stance.seated()).isFalse();
    }

    /** New line for the hip's | key of the finding | words in it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "front waist height: 101 | wearer.measurements.front waist height | without the waist height",
                "waist height: 103; front waist height: 113 | wearer.measurements.front waist height | further apart",
                "waist height: 103; back waist height: 94 | wearer.measurements.back waist height | further apart",
                "waist height: 103; front waist height: [102, 103.5] | wearer.measurements.front waist height | 102.0 cm and 103.5 cm",
                "waist height: 103; front waist height: 107; back waist height: 99.5 | wearer.measurements.back waist height | further apart",
                "total crotch length: 52; back crotch length: 53 | wearer.measurements.back crotch length | not below the total crotch length",
                "crotch height: 59; knee height: 59.2 | wearer.measurements.crotch height | not above the knee height",
            })
    void measuresThatContradictAreNamed(String lines, String key, String words) {
        String text = SampleText.with(HIP, HIP + "\n    " + lines.replace("; ", "\n    "));
        named(text, key, words);
    }

    /** What stands in the figure | measures | key | words. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "full seat: 1, flat seat: 1 |  | wearer.figure shifts.flat seat | contradict each other",
                "knock knees: 1, bow legs: 1 |  | wearer.figure shifts.bow legs | contradict each other",
                "full seat: 0.1 |  | wearer.figure shifts.full seat | out of range",
                "full seat: much |  | wearer.figure shifts.full seat | is not a length",
                "long neck: 1 |  | wearer.figure shifts.long neck | is not a key",
                "full seat: 1 | total crotch length: 70; back crotch length: 32 | wearer.figure shifts.full seat | contradicts the measures",
                "flat seat: 1 | total crotch length: 70; back crotch length: 39 | wearer.figure shifts.flat seat | contradicts the measures",
                "swayed back: 1 | waist height: 103; back waist height: 104.5 | wearer.figure shifts.swayed back | contradicts the measures",
            })
    void figuresThatContradictAreNamed(String figure, String measures, String key, String words) {
        String lines = measures == null ? "" : "\n    " + measures.replace("; ", "\n    ");
        String text = SampleText.with(HIP, HIP + lines + "\n  figure shifts: {" + figure + "}");
        named(text, key, words);
    }

    /** A point | its key | words. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "back crotch point: 4 | style.shifts.back crotch point | out of range",
                "front knee: nan | style.shifts.front knee | cannot be measured",
                "front ankle: 1 | style.shifts.front ankle | is not a key",
                "hem: -5 | style.shifts.hem | out of range",
            })
    void shiftsThatNoMakerMakesAreRefused(String shift, String key, String words) {
        Finding finding = SampleReading.only(SampleText.with("rise: waist", "shifts: {" + shift + "}"));
        assertThat(finding.key()).isEqualTo(key);
        assertThat(finding.problem()).contains(words);
    }

    private static void named(String text, String key, String words) {
        assertThat(findings(text)).anySatisfy(f -> {
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.problem()).contains(words);
        });
    }
}
