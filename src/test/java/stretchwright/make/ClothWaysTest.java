package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;

/** One invented make on every kind of cloth, spread in every way: a lay that holds and its sheets, or a finding; never a fault. */
class ClothWaysTest {
    /** What the cloth is, and what of the lay is asked for; the check of every lay runs inside. */
    private static final Map<String, List<String>> CLOTHS = new LinkedHashMap<>(Map.of(
            "plain", List.of("", ""),
            "either way", List.of("  one way: false\n", ""),
            "gap", List.of("", ", scissor gap: 0.6"),
            "print", List.of("  repeat along: 6.4\n", ", match print at: side"),
            "flaws", List.of("  flaws: [{from left: 30, from end: 52, wide: 1, long: 2}]\n", ""),
            "remnant", List.of("  on hand: {outline: [[0, 0], [147, 0], [147, 260], [60, 290], [0, 290]]}\n", ""),
            "contrast", List.of("  contrasts: [{pieces: [cuff], usable width: 90}]\n", ""),
            "selvage", List.of("  selvage: 2\n", "")));

    /** By way: folded crosswise the upper layer lies the other way round; part folded the open stretch begins anywhere. */
    private static final Map<String, List<String>> REFUSED = Map.of(
            "folded crosswise", List.of("plain", "gap", "print", "flaws", "remnant", "contrast", "selvage"),
            "part folded", List.of("print", "flaws", "remnant"));

    private static MakeFile make(String way, String cloth, String terms) {
        String text = SampleText.WHOLE
                .replace("  on hand: 1.6 m\n", cloth)
                .replace("  one way: true\n", cloth.contains("one way") ? "" : "  one way: true\n")
                .replace("  repeat along: 0\n", cloth.contains("repeat") ? "" : "  repeat along: 0\n")
                .replace("lay: any", "lay: {way: " + way + terms + "}");
        return Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"any", "open", "folded", "folded crosswise", "folded off the middle", "part folded"})
    void aLayOrAFinding(String way) {
        CLOTHS.forEach((name, cloth) -> {
            try {
                Made made = Make.run(make(way, cloth.get(0), cloth.get(1)), Progress.silent());
                assertThat(made.documents()).as(name).extracting(Document::name).contains("lay.pdf");
                assertThat(REFUSED.getOrDefault(way, List.of())).as(way).doesNotContain(name);
            } catch (BadInput e) {
                assertThat(REFUSED.getOrDefault(way, List.of()))
                        .as(way + ": " + e.getMessage())
                        .contains(name);
                assertThat(e.findings()).as(name).allMatch(f -> f.key().startsWith("style.lay"));
            }
        });
    }

    /** The leg has that notch, the cuff from another cloth has not: its lay is as free as without. */
    @Tag("slow")
    @Test
    void aContrastWithoutTheNotchOfThePrintIsLaidFreely() {
        String cloth = "  repeat along: 6.4\n  contrasts: [{pieces: [cuff], usable width: 90}]\n";
        Made made = Make.run(make("open", cloth, ", match print at: knee"), Progress.silent());
        assertThat(made.contrasts()).hasSize(1);
    }

    @Test
    void aPrintThatIsNotThereCannotMeet() {
        assertThat(wrong(make("open", "", ", match print at: knee")))
                .isEqualTo("style.lay.match print at: asks for a print to meet, but no cloth of this make repeats.");
        assertThat(wrong(make("open", "  repeat along: 6.4\n", ", match print at: elbow")))
                .isEqualTo("style.lay.match print at: No piece has a notch of this name.");
    }

    private static String wrong(MakeFile make) {
        try {
            Make.run(make, Progress.silent());
            return "";
        } catch (BadInput e) {
            return e.findings().get(0).key() + ": " + e.findings().get(0).problem();
        }
    }
}
