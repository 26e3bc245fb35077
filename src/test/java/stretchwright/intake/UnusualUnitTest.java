package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A bare number that was surely meant in another unit is asked about; examples are true in the unit of the file. */
class UnusualUnitTest {
    private static String inches(String fabric, String style) {
        return """
                stretchwright: 1
                name: Sample
                unit: in
                wearer: {figure: woman, measurements: {hip girth: 38, stature: 64}}
                fabric: {stretch across: 60 %, stretch along: 45 %, """ + fabric + "}\nstyle: {leg: ankle, " + style + "}\n";
    }

    @Test
    void whatAFindingSuggestsIsTrueInInches() {
        String missing = inches("name: knit", "cuff: {}");
        assertThat(findings(missing))
                .extracting(f -> f.key() + ": " + f.remedy())
                .containsExactlyInAnyOrder(
                        "style.cuff.height: Write for example: height: 1 1/4",
                        "fabric.usable width: Write for example: usable width: 57 7/8");
        assertThat(read(inches("usable width: 57 7/8", "cuff: {height: 1 1/4}"))
                        .fabric()
                        .roll()
                        .usableWidth())
                .isBetween(1460.0, 1480.0);
    }

    /** By hand: 147 in are 3.73 m, 3.2 in are 81 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "usable width: 147 | cuff: {height: 1.25} | fabric.usable width | \"147\" is taken as 147 in | 147 cm; or 147 in",
                "usable width: 58 | cuff: {height: 3.2} | style.cuff.height | \"3.2\" is taken as 3.2 in | 3.2 cm; or 3.2 in",
                "usable width: 58 | waistband: {height: 6.5} | style.waistband.height | taken as 6.5 in | 6.5 cm; or 6.5 in"
            })
    void aNumberThatWouldBeUsualInAnotherUnitIsAskedAbout(
            String fabric, String style, String key, String wrong, String right) {
        assertThat(findings(inches(fabric, style))).singleElement().satisfies(f -> {
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.problem()).contains(wrong);
            assertThat(f.remedy()).contains(right);
        });
    }

    @Test
    void withItsOwnUnitItPasses() {
        assertThat(read(inches("usable width: 147 in", "cuff: {height: 3.2 in}"))
                        .style()
                        .cuffHeight()
                        .orElseThrow())
                .isEqualTo(81.28);
        assertThat(read(inches("usable width: 147 cm", "cuff: {height: 3.2 cm}"))
                        .fabric()
                        .roll()
                        .usableWidth())
                .isEqualTo(1470);
    }

    /** Unusual in every unit: that is for the ranges and the body room to judge, not for the unit. */
    @Test
    void whatIsUsualInNoUnitIsNotAskedAbout() {
        assertThat(read(inches("usable width: 20", "cuff: {height: 1.25}"))
                        .fabric()
                        .roll()
                        .usableWidth())
                .isEqualTo(508);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hip girth: 96.1 | hip girth: 961 | Is 961 mm meant?",
                "hip girth: 96.1 | hip girth: 0.961 | Is 0.961 m meant?",
                "usable width: 147 | usable width: 1470 | Is 1470 mm meant?",
                "seam allowance: 0.7 | seam allowance: 7 | Is 7 mm meant?"
            })
    void outOfRangeTheUnitThatMayBeMeantIsTold(String old, String now, String words) {
        assertThat(findings(SampleText.with(old, now)))
                .anySatisfy(f -> assertThat(f.remedy()).contains("Allowed is", words));
    }

    @Test
    void readingsAreAskedAboutOnce() {
        assertThat(findings(SampleText.with("waist girth: 74.2", "waist girth: [29, 29.5, 30]")))
                .singleElement()
                .satisfies(f -> assertThat(f.line()).contains("waist girth", "29 cm", "29 in"));
    }
}
