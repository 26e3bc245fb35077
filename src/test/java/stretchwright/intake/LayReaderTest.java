package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.fabric.ClothShape;
import stretchwright.ground.Finding;
import stretchwright.ground.Point;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Style;

/** How the lay and the cloth as it is are written in a make file. */
class LayReaderTest {
    private static String with(String fabric, String style) {
        return """
                stretchwright: 1
                name: Sample
                unit: cm
                wearer: {figure: woman, measurements: {stature: 165}}
                fabric:
                  usable width: 147
                  stretch across: 60 %
                  stretch along: 45 %
                """ + fabric + "\nstyle:\n  leg: ankle\n" + style + "\n";
    }

    private static String lines(String text) {
        return findings(text).stream().map(Finding::line).collect(Collectors.joining("\n"));
    }

    @Test
    void aWordOrASection() {
        assertThat(read(with("", "  lay: part folded")).style().lay()).isEqualTo(LayTerms.of(Style.LayWay.PART_FOLDED));
        LayTerms terms = read(with(
                        "", "  lay: {way: open, scissor gap: 5 mm, grain tolerance: 1 degree, match print at: knee}"))
                .style()
                .lay();
        assertThat(terms.way()).isEqualTo(Style.LayWay.OPEN);
        assertThat(terms.gap()).isEqualTo(5);
        assertThat(terms.tilt()).isEqualTo(1);
        assertThat(terms.matchAt()).contains("knee");
        assertThat(read(with("", "  lay: {scissor gap: 0.5}")).style().lay().gap())
                .isEqualTo(5);
    }

    @Test
    void aRemnantAndItsFlaws() {
        ClothShape shape = read(with(
                        "  on hand: {outline: [[0, 0], [140, 0], [140, 90], [60, 120], [0, 120]]}\n"
                                + "  flaws: [{from left: 30, from end: 52, wide: 1, long: 2}]",
                        ""))
                .fabric()
                .roll()
                .shape();
        assertThat(shape.outline().orElseThrow().points()).hasSize(5).contains(new Point(1400, 900));
        assertThat(shape.flaws().get(0).box().minX()).isEqualTo(300);
        assertThat(shape.flaws().get(0).box().maxY()).isEqualTo(540);
        assertThat(read(with("  on hand: {outline: [[0, 0], [140, 0], [140, 90]]}", ""))
                        .fabric()
                        .roll()
                        .onHand())
                .hasValue(900);
        assertThat(read(with("", "")).fabric().roll().shape()).isEqualTo(ClothShape.WHOLE);
    }

    /** A flaw measured in other units, or from elsewhere, would be laid over. */
    @Test
    void aFlawBesideTheClothIsAFinding() {
        String remnant = "  on hand: {outline: [[0, 0], [140, 0], [140, 90]]}\n";
        assertThat(findings(with("  flaws: [{from left: 300, from end: 52, wide: 1, long: 2}]", "")))
                .singleElement()
                .matches(f -> f.problem().endsWith("lies beyond the cloth, which is 147 cm wide."));
        assertThat(findings(with(remnant + "  flaws: [{from left: 3, from end: 90, wide: 1, long: 2}]", "")))
                .singleElement()
                .matches(f -> f.problem().endsWith("lies beyond the remnant, which is 90 cm long."));
        assertThat(findings(with(remnant + "  selvage: 2", "")))
                .singleElement()
                .matches(f -> f.key().equals("fabric.selvage"));
        assertThat(read(with("  selvage: 2", "")).fabric().roll().shape().selvage())
                .isEqualTo(20);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lay: rolled | Is \"folded\" meant? Choose: any, folded, open, folded crosswise",
                "lay: {scissor gap: 9} | 0 cm to 5 cm",
                "lay: {scissor gap: -1} | 0 cm to 5 cm",
                "lay: {scissor gap: NaN} | cannot be measured",
                "lay: {grain tolerance: 5} | 0 degrees to 2 degrees",
                "lay: {grain tolerance: slanted} | an angle",
                "lay: {gap: 1} | is not a key",
                "lay: [open] | ",
            })
    void aWrongLayIsAFinding(String lay, String said) {
        assertThat(lines(with("", "  " + lay))).as(lay).contains("lay").contains(said == null ? "" : said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "on hand: {outline: []} | encloses no cloth",
                "on hand: {outline: [[0, 0], [10, 10]]} | encloses no cloth",
                "on hand: {outline: [[0, 0], [100, 100], [100, 0], [0, 100]]} | ",
                "on hand: {outline: [[0, 0], [100, 100], [0, 120], [100, 0], [50, -10]]} | ",
                "on hand: {outline: [[0, 0], [200, 0], [200, 100]]} | farther than the usable width",
                "on hand: {outline: [0, 1, 2]} | pair of lengths",
                "on hand: {outline: [[0, 0, 0], [1, 1, 1]]} | ",
                "on hand: {outline: all of it} | a list is wanted",
                "on hand: {length: 4} | outline",
                "on hand: {outline: [[0, 0], [1e300, 0], [0, .inf]]} | ",
                "flaws: [{from left: 3}] | from end",
                "flaws: [{from left: 3, from end: 4, wide: 0, long: 1}] | ",
                "flaws: [{from left: 3, from end: 4, wide: one, long: 1}] | length",
                "flaws: none | a list is wanted",
                "flaws: [3, 4] | sections are wanted",
            })
    void aWrongClothIsAFinding(String fabric, String said) {
        assertThat(lines(with("  " + fabric, "")))
                .as(fabric)
                .contains("fabric.")
                .contains(said == null ? "" : said);
    }
}
