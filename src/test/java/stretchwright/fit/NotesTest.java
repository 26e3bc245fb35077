package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.InWords;
import stretchwright.ground.Said;

/** Which notes stand among the verdicts. */
class NotesTest {
    private static Verdict note(String key) {
        return new Verdict(Severity.NOTE, Tell.said("about.hem"), Tell.said(key), Said.NOTHING);
    }

    private static FitReport with(List<Verdict> verdicts) {
        return new FitReport(List.of(), List.of(), List.of(), verdicts);
    }

    private static List<String> keys(List<Verdict> verdicts) {
        return verdicts.stream().map(v -> v.message().key()).toList();
    }

    /** By what can be acted on before cutting, in whatever order they were found; cautions stay as they were. */
    @Test
    void threeStayByTheirRank() {
        Verdict caution = new Verdict(Severity.CAUTION, Tell.said("about.hem"), Tell.said("lower.low"), Said.NOTHING);
        List<Verdict> found = new ArrayList<>(List.of(
                caution,
                note("parts.knee"),
                note("washed.cut"),
                note("length.leg"),
                note("garment.child"),
                note("wanted.missed"),
                note("band.no-dart")));
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(found, new Random(i));
            FitReport few = Notes.few(with(found));
            assertThat(keys(few.verdicts()))
                    .containsExactly("lower.low", "garment.child", "wanted.missed", "washed.cut");
            assertThat(keys(few.asides())).containsExactly("length.leg", "parts.knee", "band.no-dart");
            assertThat(few.all()).containsExactlyInAnyOrderElementsOf(found);
            assertThat(Notes.few(few)).isEqualTo(few);
        }
    }

    @Test
    void threeAndFewerAreLeftAlone() {
        FitReport fit = with(List.of(note("garment.child"), note("washed.cut"), note("length.leg")));
        assertThat(Notes.few(fit)).isEqualTo(fit);
    }

    /** More of it than three notes hold: the third tells all the rest, each with what it is about. */
    @Test
    void safetyIsNeverAside() {
        FitReport few = Notes.few(with(List.of(
                note("slack.loose"),
                new Verdict(
                        Severity.NOTE,
                        Tell.said("about.thigh"),
                        Tell.said("parts.phone"),
                        Tell.said("parts.phone-help")),
                note("garment.child"),
                note("lower.over-boot"),
                note("lower.inside-boot"))));
        assertThat(few.verdicts()).hasSize(3);
        assertThat(keys(few.verdicts()).subList(0, 2)).containsExactly("garment.child", "lower.over-boot");
        String rest = InWords.words(few.verdicts().get(2).message());
        assertThat(rest)
                .contains("hem: The leg ends inside the boot", "thigh: One pocket is cut", "Leave it empty for jumps");
        assertThat(keys(few.asides())).containsExactly("slack.loose");
        assertThat(Notes.few(few)).isEqualTo(few);
    }
}
