package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What can be moved on a make on the table: slabs on the drawing, presses, and fields to type in. */
class MovedValuesTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static String left = "";

    /** One that no test changes. */
    private static synchronized String leftAlone() throws Exception {
        left = left.isEmpty() ? PAGE.visitor().make() : left;
        return left;
    }

    /** The page of that one as it would be with other values. */
    private static String tried(Map<String, String> other) throws Exception {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        other.forEach((key, value) -> typed.put(key, List.of(value)));
        HttpResponse<String> answer = PAGE.visitor().post(leftAlone() + "/try", typed);
        assertThat(answer.statusCode()).as(other.toString()).isEqualTo(200);
        return answer.body();
    }

    private static HttpResponse<String> sent(String at, String way, String key, String value) throws Exception {
        return PAGE.visitor()
                .post(at + way, Map.of("seen", List.of(PAGE.visitor().seen(at)), key, List.of(value)));
    }

    private static String page(String at) throws Exception {
        return PAGE.visitor().get(at).body();
    }

    private static String drawn(String page) {
        return Visitor.found(page, "class=\"cut\" d=\"([^\"]+)\"");
    }

    private static String field(String page, String id) {
        return Visitor.found(page, "id=\"" + id + "-typed\"[^>]*value=\"([^\"]*)\"");
    }

    private static String finding(String page, String id) {
        return Visitor.found(page, "id=\"" + id + "-wrong\"[^>]*>([^<]*)<");
    }

    @Test
    void bandHemWidthAndLevelsHaveSlabsThatSayWhatTheyAre() throws Exception {
        String page = page(leftAlone());
        for (String id : List.of("hem", "at_hem", "front_waist", "back_waist", "band", "at_knee")) {
            assertThat(page).as("on a laptop").contains("id=\"grip-" + id + "\"");
            assertThat(page).as("on a phone").contains("id=\"grip-" + id + "-small\"");
        }
        assertThat(page)
                .contains("aria-label=\"Width at the knee\"", "aria-label=\"Width of the hem\"")
                .contains("aria-valuetext=\"6.5 cm high\"");
    }

    /** Slabs that a finger cannot tell apart are left out. */
    @Test
    void noSlabLiesOnAnother() throws Exception {
        for (String leg : List.of("ankle", "short", "knee", "calf", "over boot")) {
            String page = tried(Map.of("style.leg", leg));
            for (String sheet :
                    page.substring(page.indexOf("<svg class=\"wide\"")).split("<svg class=\"narrow\"", 2)) {
                List<double[]> at = Pattern.compile(
                                "class=\"grip[^\"]*\" transform=\"translate\\(([-0-9.]+) ([-0-9.]+)\\)")
                        .matcher(sheet.substring(0, sheet.indexOf("</svg>")))
                        .results()
                        .map(m -> new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))})
                        .toList();
                assertThat(at).hasSizeGreaterThan(4);
                for (int i = 0; i < at.size(); i++) {
                    for (int k = 0; k < i; k++) {
                        double apart =
                                Math.max(Math.abs(at.get(i)[0] - at.get(k)[0]), Math.abs(at.get(i)[1] - at.get(k)[1]));
                        assertThat(apart).as(leg).isGreaterThanOrEqualTo(43.9);
                    }
                }
            }
        }
    }

    @Test
    void aCasingHasNoBandToMove() throws Exception {
        String page = tried(Map.of(
                "style.waistband.shape", "casing", "of", "style.waistband.height", "style.waistband.elastic", "2.5"));
        assertThat(page).contains("grip-at_hem").doesNotContain("grip-band");
    }

    @Test
    void aLevelIsMadeTighterAndUndoNamesIt() throws Exception {
        String at = PAGE.visitor().make();
        String before = drawn(page(at));
        assertThat(page(at)).contains("Tighter or looser at a level").doesNotContain("id=\"levels\" open");
        assertThat(sent(at, "/change", "style.ease.knee", "-5.0 mm").statusCode())
                .isEqualTo(303);
        assertThat(page(at)).contains("Undo: knee 0.5 cm tighter", "id=\"levels\" open");
        assertThat(drawn(page(at))).isNotEqualTo(before);
        assertThat(PAGE.visitor().text(at)).contains("knee: \"-5.0 mm\"");
        assertThat(sent(at, "/change", "style.ease.hem", "5.0 mm").statusCode()).isEqualTo(303);
        assertThat(page(at)).contains("Undo: Width of the hem 0.5 cm wider");
    }

    @Test
    void atItsLimitItSaysSoAndGoesNoFurther() throws Exception {
        assertThat(tried(Map.of("style.ease.hem", "0.1")))
                .as("small, and yet of this unit")
                .contains("0.1 cm wider");
        assertThat(tried(Map.of("style.ease.hem", "6")))
                .contains("6.0 cm wider, as far as it goes", "id=\"at_hem-less\"")
                .doesNotContain("id=\"at_hem-more\"");
    }

    @Test
    void whatIsTypedIsReadInTheMakersUnit() throws Exception {
        String at = PAGE.visitor().make();
        assertThat(sent(at, "/change", "style.shifts.hem", " 1,5 ").statusCode())
                .isEqualTo(303);
        assertThat(page(at)).contains("1.5 cm longer");
        assertThat(field(page(at), "hem")).isEqualTo("1.5");
        assertThat(sent(at, "/change", "style.waistband.height", "7").statusCode())
                .isEqualTo(303);
        assertThat(page(at)).contains("7.0 cm high", "Undo: Height of the band 0.5 cm higher");
        Map<String, List<String>> emptied =
                Map.of("seen", List.of(PAGE.visitor().seen(at)), "of", List.of("style.shifts.hem"));
        assertThat(PAGE.visitor().post(at + "/change", emptied).statusCode()).isEqualTo(303);
        assertThat(field(page(at), "hem")).as("emptied is as usual").isEqualTo("0");
    }

    @Test
    void inchesAreTypedAsFractions() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.replaceAll((key, values) ->
                values.get(0).matches("[0-9.]+") && key.matches("(wearer.measurements|fabric|boot|style).*")
                        ? List.of(values.get(0) + " cm")
                        : values);
        typed.put("unit", List.of("in"));
        String at = Visitor.at(PAGE.visitor().post(typed));
        assertThat(sent(at, "/change", "style.shifts.hem", "-1/2").statusCode()).isEqualTo(303);
        assertThat(page(at)).contains("1/2 in shorter");
        assertThat(field(page(at), "hem")).isEqualTo("-1/2");
        assertThat(sent(at, "/change", "style.shifts.hem", "1\u00bc").statusCode())
                .isEqualTo(303);
        assertThat(page(at)).contains("1 1/4 in longer");
        assertThat(page(at)).contains("value=\"38.1 mm\"");
    }

    @Test
    void aFieldThatIsSentAsItWasChangesNothing() throws Exception {
        String at = leftAlone();
        String before = PAGE.visitor().text(at);
        for (String[] as : List.of(
                new String[] {"style.shifts.hem", "0"},
                new String[] {"style.waistband.height", "6.5"},
                new String[] {"style.ease.knee", "0"})) {
            assertThat(sent(at, "/change", as[0], as[1]).statusCode()).isEqualTo(303);
        }
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
        assertThat(page(at)).doesNotContain("Undo: ");
    }

    @Test
    void nonsenseKeepsTheDrawingAndIsToldAtItsField() throws Exception {
        String at = leftAlone();
        String before = drawn(page(at));
        for (String way : List.of("/try", "/change")) {
            for (String nonsense : List.of("long", "<script>alert(1)</script>", "99", "-")) {
                HttpResponse<String> answer = sent(at, way, "style.shifts.hem", nonsense);
                assertThat(answer.statusCode()).as(nonsense).isEqualTo(422);
                assertThat(drawn(answer.body())).isEqualTo(before);
                assertThat(finding(answer.body(), "hem")).as(nonsense).isNotBlank();
                assertThat(finding(answer.body(), "front_waist")).isEmpty();
                assertThat(answer.body()).doesNotContain("<script>alert", "class=\"wrong\"");
            }
        }
        assertThat(field(sent(at, "/change", "style.shifts.hem", "long").body(), "hem"))
                .as("it is there to be mended")
                .isEqualTo("long");
    }

    @Test
    void whatIsTypedIsDrawnAndNotKept() throws Exception {
        String at = leftAlone();
        String before = PAGE.visitor().text(at);
        HttpResponse<String> tried = sent(at, "/try", "style.ease.hem", "1");
        assertThat(tried.statusCode()).isEqualTo(200);
        assertThat(tried.body()).contains("1.0 cm wider", "class=\"before\"");
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
    }
}
