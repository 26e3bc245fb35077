package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Shift;
import stretchwright.wearing.Wearing;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Figures and shifts from the make file to the report, to the next cloth, and after wearing. */
class MovedTest {
    private static final String FIGURE = "  figure: woman\n  figure shifts: {swayed back: 1.2, bow legs: 8 mm}";
    private static final String SHIFTS = "style:\n  shifts: {front knee: 4 mm}";

    private static String text(boolean moved) throws IOException {
        String text = Files.readString(Path.of("examples", "ankle-length.yaml"));
        return moved ? text.replace("  figure: woman", FIGURE).replace("style:", SHIFTS) : text;
    }

    private static MakeFile read(String text) {
        return Make.read("moved.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theReportTellsWhatWasAskedAndWhatItMoved() throws IOException {
        Made made = Make.run(read(text(true)), Progress.silent());
        JsonNode report = JsonMapper.shared().readTree(made.report().bytes());
        assertThat(report.at("/wearer/figureShifts/swayed back").asDouble()).isEqualTo(12);
        assertThat(report.at("/style/shifts/front knee").asDouble()).isEqualTo(4);
        assertThat(report.at("/pattern/moved")).hasSize(3);
        assertThat(report.at("/pattern/moved").toString())
                .contains("\"by\":\"shifts\"", "\"back waist\":-12", "\"side hem\":8");
        assertThat(made.fit().all().stream().map(v -> Voice.plain().say(v.message())))
                .contains("swayed back, 12 mm: back waist 12 mm down.", "bow legs, 8 mm: side hem 8 mm down.");
    }

    /** The legs as measured meet; what was moved is at fault, and not a thigh. */
    @Test
    void legsThatDoNotMeetForWhatWasMovedNameTheShift() throws IOException {
        String text = Files.readString(Path.of("examples", "two-different-legs.yaml"));
        assertThat(pattern(text).legs()).hasSize(2);
        String moved = text.replace("style:", "style:\n  shifts: {back hip: 20 mm, back crotch point: -10 mm}");
        assertThatThrownBy(() -> pattern(moved))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        e -> assertThat(e.findings()).extracting(Finding::key).containsOnly("style.shifts.back hip"));
    }

    /** In another cloth, and for a wearer measured anew, the same points move by the same amounts. */
    @Test
    void aNewDraftKeepsThem() throws IOException {
        for (String[] change : new String[][] {
            {"", ""}, {"stretch across: 110 %", "stretch across: 70 %"}, {"thigh girth: 59.5", "thigh girth: 61"}
        }) {
            Pattern plain = pattern(text(false).replace(change[0], change[1]));
            Pattern moved = pattern(text(true).replace(change[0], change[1]));
            assertThat(moved.shift(Shift.BACK_WAIST)).isEqualTo(-12);
            assertThat(backWaist(plain) - backWaist(moved)).as(change[1]).isCloseTo(11, within(3.0));
            assertThat(moved.level(stretchwright.pattern.Level.Name.KNEE)
                                    .orElseThrow()
                                    .width()
                            - plain.level(stretchwright.pattern.Level.Name.KNEE)
                                    .orElseThrow()
                                    .width())
                    .as(change[1])
                    .isCloseTo(4, within(0.1));
        }
    }

    private static Pattern pattern(String text) {
        return Session.of(read(text)).pattern();
    }

    private static double backWaist(Pattern pattern) {
        return pattern.legs().get(0).edge(EdgeName.BACK_CROTCH).line().end().y();
    }

    /** What makers change at the back inseam after wearing is the same shift. */
    @Test
    void afterWearingTheSamePointsMove() throws IOException {
        Wearing wearing = Wearing.of(read(text(true)), "drag lines from crotch to hip", "", "2026-01-31");
        assertThat(wearing.findings()).isEmpty();
        assertThat(wearing.changed().style().shifts().at(Shift.BACK_CROTCH_POINT))
                .isEqualTo(5);
        assertThat(wearing.changed().style().shifts().at(Shift.FRONT_KNEE)).isEqualTo(4);
    }
}
