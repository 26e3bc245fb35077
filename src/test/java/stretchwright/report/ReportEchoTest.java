package stretchwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import stretchwright.intake.SampleText;
import stretchwright.intake.Table;
import tools.jackson.databind.node.ObjectNode;

/** What was put in is repeated in the report. */
class ReportEchoTest {
    private static ObjectNode style(String text) {
        ObjectNode out = Report.node();
        ReportEcho.section(out, "style", read(text), Table.keys());
        return out;
    }

    /** W8 of the trade values: 18 mmHg are 2.400 kPa. */
    @Test
    void easeAndHoldByLevelAreNotLost() {
        ObjectNode style = style(SampleText.with(
                "hold: medium", "hold: {calf: 18 mmHg, knee: 7 mmHg}\n  ease: {knee: 10 mm, mid-thigh: -5 mm}"));
        assertThat(style.at("/ease/knee").asDouble()).isEqualTo(10);
        assertThat(style.at("/ease/mid-thigh").asDouble()).isEqualTo(-5);
        assertThat(style.at("/holds/calf").asDouble()).isEqualTo(2.400);
        assertThat(style.get("holds").size()).isEqualTo(2);
        assertThat(style.get("hold").asString()).isEqualTo("own profile");
    }

    @Test
    void whatWasNotSaidIsNotRepeated() {
        ObjectNode style = style(SampleText.WHOLE);
        assertThat(style.has("ease")).isFalse();
        assertThat(style.has("holds")).isFalse();
        assertThat(style.get("hold").asString()).isEqualTo("medium");
    }
}
