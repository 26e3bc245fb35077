package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Finding;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** The style of a make file: what is read, and what is said about slips and contradictions in it. */
class StyleReadTest {
    @Test
    void seamsMayHaveAllowancesOfTheirOwn() {
        Style style = read(SampleText.with(
                        "seam allowance: 0.7", "seam allowance: {default: 0.7, inseam: 1.0, waistband: 12 mm}"))
                .style();
        assertThat(style.allowance(Seam.Role.INSEAM)).isEqualTo(10);
        assertThat(style.allowance(Seam.Role.WAISTBAND_JOIN)).isEqualTo(12);
        assertThat(style.allowance(Seam.Role.BACK_RISE)).isEqualTo(7);
    }

    @Test
    void theRiseIsTheWaistALengthOrTheMeasuredHip() {
        assertThat(read(SampleText.with("rise: waist", "rise: 4")).style().dropBelowWaist())
                .isEqualTo(40);
        String both = SampleText.with("rise: waist", "rise: hip")
                .replace("hip girth: 96.1", "hip girth: 96.1\n    waist height: 103\n    hip height: 83");
        assertThat(read(both).style().dropBelowWaist()).isCloseTo(100, within(1e-9));
        assertThat(only(SampleText.with("rise: waist", "rise: hip")).problem()).contains("waist height");
    }

    /** Old line | new line | key of the finding | words in it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "leg: over boot | leg: stirrup | style.cuff | cannot hold the strap of leg \"stirrup\"",
                "leg: over boot | leg: trailing | style.leg | Choose: over boot, ankle",
                "shape: straight | shape: contoured | style.waistband.shape | at odds with rise: waist",
                "elastic: none | elastic: 7 | style.waistband.elastic | out of range",
                "elastic: none | elastic: wide | style.waistband.elastic | is not a length",
                "height: 6.5, elastic: none | height: 2, elastic: 2 | style.waistband.elastic | takes 2.32 cm inside a band of 2 cm",
                "shape: straight, height: 6.5, elastic: none | shape: contoured, height: 4, elastic: 2 | style.waistband.elastic | is at odds with shape: contoured",
                "shape: straight, height: 6.5, elastic: none | shape: contoured, height: 4, drawstring: true | style.waistband.drawstring | is at odds with shape: contoured",
                "shape: straight, height: 6.5 | shape: casing | style.waistband.shape | needs an elastic",
                "shape: straight, height: 6.5, elastic: none | shape: casing, height: 6.5, elastic: 3 | style.waistband.height | a casing of 6.5 cm does not go with an elastic of 3 cm: it would turn over",
                "shape: straight, height: 6.5, elastic: none | shape: casing, height: 2.5, elastic: 3 | style.waistband.height | it would not go in",
                "shape: straight, height: 6.5, elastic: none | shape: casing, elastic: 3, key pocket: 5 | style.waistband.key pocket | at odds with shape: casing",
                "height: 6.5, elastic: none | height: 4, key pocket: 5 | style.waistband.key pocket | would be only 3 cm deep in a band of 4 cm",
                "height: 6.5, elastic: none | height: 6, elastic: 4, key pocket: 5 | style.waistband.key pocket | in a band of 6 cm below an elastic of 4 cm",
                "height: 6.5, elastic: none | height: 6.5, key pocket: 2 | style.waistband.key pocket | out of range",
                "height: 6.5, elastic: none | height: 6.5, drawstring: yes | style.waistband.drawstring | Choose: true, false",
                "rise: waist | front waist: -9 | style.front waist | Allowed is -5 cm to +6 cm",
                "rise: waist | back waist: high | style.back waist | is not a length",
                "rise: waist | back: dart | style.back | Choose: plain, darts, shaped seam",
                "side seam: none | side seam: curved | style.side seam | Choose: none, shaped",
                "side seam: none | panel: {width: 60} | style.panel.width | out of range",
                "side seam: none | panel: {} | style.panel.width | is missing",
                "side seam: none | panel: wide | style.panel | a section with keys is wanted",
                "side seam: none | gusset: {length: 15} | style.gusset.width | is missing",
                "side seam: none | gusset: {length: 15, width: 60} | style.gusset.width | out of range",
                "side seam: none | knee shaping: yes | style.knee shaping | Choose: true, false",
                "side seam: none | pockets: phone | style.pockets | a list is wanted",
                "side seam: none | pockets: [phone] | style.pockets | sections are wanted",
                "side seam: none | pockets: [{kind: key, width: 7, height: 9}] | style.pockets.1.kind | sits in the waistband",
                "side seam: none | pockets: [{kind: purse, width: 7, height: 9}] | style.pockets.1.kind | Choose: phone, hip pad",
                "side seam: none | pockets: [{kind: hip pad, width: 7, height: 9}] | style.pockets.1.thickness | is missing",
                "cuff: {height: 3.2} | cuff: {height: 45} | style.cuff.height | out of range",
                "cuff: {height: 3.2} | cuff: {} | style.cuff.height | is missing",
                "rise: waist | rise: -3 | style.rise | is negative",
                "rise: waist | rise: low | style.rise | is not a rise",
                "seam allowance: 0.7 | seam allowance: 7 | style.seam allowance | out of range",
                "seam allowance: 0.7 | seam allowance: {inseem: 1} | style.seam allowance.inseem | Is \"inseam\" meant?",
            })
    void eachSlipIsFoundAtItsKey(String old, String now, String key, String words) {
        assertThat(findings(SampleText.with(old, now))).anySatisfy(f -> {
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.problem() + " " + f.remedy()).contains(words);
            assertThat(f.file()).isEqualTo("a.yaml");
        });
    }

    /** EN 14682: cords in children's clothing, up to 14 years. */
    @Test
    void aDrawstringIsRefusedForAChildAndTakenForAnAdult() {
        String corded = SampleText.with("elastic: none", "elastic: 2.5, drawstring: true");
        assertThat(read(corded).style().top().band().drawstring()).isTrue();
        Finding young = only(corded.replace("age: 31", "age: 14"));
        assertThat(young.key()).isEqualTo("style.waistband.drawstring");
        assertThat(young.problem()).contains("child").contains("EN 14682");
        assertThat(young.remedy()).contains("elastic");
        assertThat(findings(corded.replace("figure: woman", "figure: child").replace("age: 31", "age: 12")))
                .anySatisfy(f -> assertThat(f.key()).isEqualTo("style.waistband.drawstring"));
    }

    @Test
    void theTopIsReadInMillimetres() {
        TopEnd top = read(SampleText.with(
                                "rise: waist", "rise: 6\n  front waist: -1\n  back waist: +1.5 cm\n  back: shaped seam")
                        .replace(
                                "{shape: straight, height: 6.5, elastic: none}",
                                "{shape: contoured, height: 6, key pocket: 4.5}"))
                .style()
                .top();
        assertThat(top.frontRaise()).isEqualTo(-10);
        assertThat(top.backRaise()).isEqualTo(15);
        assertThat(top.back()).isEqualTo(TopEnd.BackShape.SHAPED_SEAM);
        assertThat(top.band().shape()).isEqualTo(TopEnd.Band.Shape.CONTOURED);
        assertThat(top.band().keyPocket()).hasValue(45);
        TopEnd cased = read(SampleText.with(
                        "{shape: straight, height: 6.5, elastic: none}", "{shape: casing, elastic: 3}"))
                .style()
                .top();
        // 1/8 in over the elastic, trade values section 5
        assertThat(cased.band().height()).isCloseTo(33.2, within(1e-9));
    }
}
