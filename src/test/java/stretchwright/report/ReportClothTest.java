package stretchwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.only;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.make.SampleRooms;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The cloth in the report: the sum to buy, metric and in yards, and the cloth on hand from the make file on. */
class ReportClothTest {
    private static final String ON_HAND = "  on hand: 1.6 m\n";

    private static JsonNode lay(String text) {
        MakeFile make = SampleRooms.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
        byte[] report = SampleRooms.run(make, Progress.silent()).report().bytes();
        return JsonMapper.builder().build().readTree(report).get("lay");
    }

    private static JsonNode having(double mm) {
        return lay(SampleText.with(ON_HAND, String.format(Locale.ROOT, "  on hand: %.2f mm%n", mm)));
    }

    @Tag("slow")
    @Test
    void theSumOfTheReportAddsUpAndIsRoundedUpOnce() {
        JsonNode sum = lay(SampleText.WHOLE).get("sum");
        double terms = sum.get("length").asDouble()
                + sum.get("shrinkage").asDouble()
                + sum.get("straightening").asDouble()
                + sum.get("repeat").asDouble();
        double needed = sum.get("needed").asDouble();
        assertThat(needed).isCloseTo(terms, within(0.02));
        double bought = sum.get("step").asDouble() * sum.get("steps").asLong();
        assertThat(lay(SampleText.WHOLE).get("buy").asDouble()).isEqualTo(bought);
        assertThat(bought).isBetween(needed, needed + 50);
    }

    /** The same garment bought by someone who measures in inches: whole eighths of a yard of 914.4 mm. */
    @Tag("slow")
    @Test
    void anInchMakeBuysInEighthsOfAYard() {
        String inches = SampleText.WHOLE
                .replace("unit: cm", "unit: in")
                .replaceAll("(girth|stature|top girth|heel girth|hem girth|ankle to hem|width): ([0-9.]+)", "$1: $2 cm")
                .replace("height: 6.5", "height: 6.5 cm")
                .replace("height: 3.2", "height: 3.2 cm")
                .replace("seam allowance: 0.7", "seam allowance: 0.7 cm");
        JsonNode lay = lay(inches);
        assertThat(lay.at("/sum/step").asDouble()).isEqualTo(114.3);
        double needed = lay.at("/sum/needed").asDouble();
        assertThat(lay.get("buy").asDouble())
                .isCloseTo(114.3 * Math.ceil(needed / 114.3), within(0.01))
                .isBetween(needed, needed + 114.3);
        assertThat(needed).isEqualTo(lay(SampleText.WHOLE).at("/sum/needed").asDouble());
    }

    /** Held against the need, which lies below what a shop cuts, to the 0.01 mm that the report shows. */
    @Tag("slow")
    @Test
    void whatIsNeededIsEnoughThoughAShopWouldCutMore() {
        JsonNode plenty = lay(SampleText.WHOLE);
        double needed = plenty.at("/sum/needed").asDouble();
        assertThat(needed).isLessThan(plenty.get("buy").asDouble());
        JsonNode just = having(needed);
        assertThat(just.get("enough").asBoolean()).isTrue();
        assertThat(just.at("/onHandCheck/verdict").asString()).isEqualTo("fits");
        assertThat(just.at("/onHandCheck/spare").asDouble()).isZero();
        JsonNode less = having(needed - 0.01);
        assertThat(less.get("enough").asBoolean()).isFalse();
        assertThat(less.at("/onHandCheck/verdict").asString()).isNotEqualTo("fits");
        assertThat(less.at("/onHandCheck/spare").asDouble()).isEqualTo(-0.01);
    }

    @Tag("slow")
    @Test
    void withoutClothOnHandThereIsNoVerdict() {
        JsonNode lay = lay(SampleText.with(ON_HAND, ""));
        assertThat(lay.has("onHand")).isFalse();
        assertThat(lay.has("enough")).isFalse();
        assertThat(lay.has("onHandCheck")).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"-1.6 m", "plenty", "0", "0 mm", "1e9 m", "201 m", "49 mm", "[1 m, 2 m]", "true", "60 %"})
    void clothOnHandThatCannotBeIsOneFinding(String value) {
        assertThat(only(SampleText.with(ON_HAND, "  on hand: " + value + "\n")).line())
                .contains("fabric.on hand");
    }
}
