package stretchwright.wearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.Condition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Nearest;
import stretchwright.intake.WearingSymptom;
import stretchwright.make.Make;

/** Symptoms: what is offered for a word that is not known, and cures that the make can take. */
class SymptomsTest {
    private static final String DATE = "2026-01-31";

    private static final Condition<Double> SOME_TEN = new Condition<>(mm -> mm > 8.9 && mm < 10.1, "some 10 mm");

    private static String offered(String words) {
        Findings findings = new Findings("make.yaml");
        assertThat(Wearing.knows(words, findings)).isFalse();
        return findings.all().get(0).remedy();
    }

    /** Nearest by letters is not nearest in sense: too short was offered to who had written too long. */
    @ParameterizedTest
    @CsvSource({
        "legs too lonk, legs too long",
        "trousers too long, legs too long",
        "the waist is too tight, waist too tight",
        "too tight at the waist, waist too tight",
        "wasit too high, waist too high",
        "folds under the bak band, folds below the back band",
        "slides down, band slides down",
    })
    void whatMayBeMeantIsOffered(String words, String meant) {
        assertThat(offered(words)).isEqualTo("Is \"" + meant + "\" meant?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"band slides up", "waist too loose", "waist much too loose", "nonsense", "too"})
    void anOppositeIsNeverOffered(String words) {
        assertThat(offered(words)).contains("lists them");
    }

    @Test
    void whatFitsSeveralAlikeIsOfferedTogether() {
        assertThat(offered("too tight")).isEqualTo("Is \"waist too tight\" or \"too tight at the calf\" meant?");
    }

    /** Every symptom with one of its words turned round: what is near by letters still says the opposite. */
    @Test
    void noWordTurnedRoundFindsItsOpposite() {
        for (String name : WearingSymptom.names()) {
            for (List<String> pair : List.of(
                    List.of("short", "long"),
                    List.of("high", "low"),
                    List.of("tight", "loose"),
                    List.of("front", "back"),
                    List.of("up", "down"))) {
                for (int one : List.of(0, 1)) {
                    String turned = name.replaceAll("\\b" + pair.get(one) + "\\b", pair.get(1 - one));
                    if (!turned.equals(name)) {
                        assertThat(Near.to(turned))
                                .as(turned)
                                .extracting(WearingSymptom::word)
                                .doesNotContain(name);
                        assertThat(Nearest.to(turned, List.of(name))).as(turned).isEmpty();
                    }
                }
            }
        }
    }

    private static MakeFile make(String text) {
        return Make.read("make.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String with(String style) {
        return "stretchwright: 1\nname: Trial\nunit: mm\nwearer: {figure: woman, measurements: {stature: 1627, hip girth: 961,"
                + " waist girth: 742, crotch height: 772, waist height: 1030, hip height: 830, knee height: 460}}\n"
                + "fabric: {usable width: 1470, stretch across: 60 %, stretch along: 45 %}\n"
                + "style: {leg: ankle" + style + "}\n";
    }

    private static Wearing wearing(MakeFile make, String symptom) {
        return Wearing.of(make, symptom, "", DATE);
    }

    private static List<String> lines(Wearing wearing) {
        return WearingLines.of(wearing, Voice.plain());
    }

    /** A change was proposed and then refused: growth is kept in a plain hem only. */
    @Test
    void aCuffedLegThatIsTooShortIsMadeLonger() {
        Wearing plain = wearing(make(with("")), "legs too short");
        assertThat(plain.changed().style().lower().growth()).isEqualTo(30);
        Wearing cuffed = wearing(make(with(", cuff: {height: 32}")), "legs too short");
        assertThat(cuffed.findings()).isEmpty();
        assertThat(String.join("\n", lines(cuffed))).contains("leg length: +10 mm", "leg length: up to +30 mm in all");
        assertThat(moved(make(with(", cuff: {height: 32}")), cuffed)).hasEntrySatisfying("leg length", SOME_TEN);
    }

    /** How much wider or longer things of the pattern are with the change, mm. */
    private static Map<String, Double> moved(MakeFile make, Wearing wearing) {
        return WearingFit.of(make, wearing.changed()).moves().stream()
                .collect(Collectors.toMap(m -> Voice.plain().say(m.what()), WearingFit.Move::by));
    }

    @Test
    void withoutACrotchHeightThereIsNothingToAddTo() {
        String text = with(", cuff: {height: 32}").replace(" crotch height: 772,", "");
        assertThat(wearing(make(text), "legs too long").findings())
                .extracting(Finding::remedy)
                .containsExactly("Measure the crotch height.");
    }

    @Test
    void theTopEdgeGoesDownAllRoundAndComesUpAgain() {
        assertThat(wearing(make(with("")), "waist too high").changed().style().dropBelowWaist())
                .isEqualTo(10);
        assertThat(wearing(make(with(", rise: 40")), "waist too low")
                        .changed()
                        .style()
                        .dropBelowWaist())
                .isEqualTo(30);
        MakeFile atWaist = wearing(make(with("")), "waist too low").changed();
        assertThat(atWaist.style().top().frontRaise()).isEqualTo(10);
        assertThat(atWaist.style().top().backRaise()).isEqualTo(10);
    }

    static Stream<String> makes() {
        return Stream.of(
                "",
                ", cuff: {height: 32}",
                ", rise: 40, waistband: {shape: contoured, height: 60}",
                ", waistband: {shape: casing, elastic: 30}",
                ", back: darts",
                ", side seam: shaped");
    }

    /** What is proposed is never refused, and does something: ten millimetres more, all round, where the band is joined or turned. */
    @ParameterizedTest
    @MethodSource("makes")
    void aWaistThatIsTooTightIsMadeWider(String style) {
        MakeFile make = make(with(style));
        Wearing wearing = wearing(make, "waist too tight");
        assertThat(wearing.findings()).isEmpty();
        String place = style.contains("casing") ? "waist elastic" : "waist";
        assertThat(moved(make, wearing)).hasEntrySatisfying(place, SOME_TEN);
    }

    @Test
    void everyChangeIsOfAMakeThatIsRead() {
        String text = with(", cuff: {height: 32}");
        for (String symptom :
                List.of("legs too short", "legs too long", "waist too high", "waist too low", "waist too tight")) {
            Findings findings = new Findings("make.yaml");
            String written =
                    wearing(make(text), symptom).written(text, findings).orElseThrow();
            assertThat(findings.all()).isEmpty();
            assertThat(make(written).worn()).hasSize(1);
        }
    }

    @Test
    void everySymptomThatAsksHasAQuestion() {
        assertThat(Arrays.stream(WearingSymptom.values())
                        .filter(WearingSymptom::asks)
                        .toList())
                .isEqualTo(Arrays.stream(WearingSymptom.values())
                        .filter(s -> Cures.question(s).isPresent())
                        .toList());
    }
}
