package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearingSymptom;
import stretchwright.make.Make;
import stretchwright.wearing.Wearing;

/** After wearing, over real HTTP. */
class WornTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static HttpResponse<String> post(String path, String... pairs) throws Exception {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            typed.put(pairs[i], List.of(pairs[i + 1]));
        }
        return PAGE.visitor().post(path, typed);
    }

    @Test
    void everySymptomHasAPictureAndAnAddress() throws Exception {
        String page = PAGE.visitor().get("makes/demo/worn").body();
        for (WearingSymptom symptom : WearingSymptom.values()) {
            assertThat(page)
                    .contains("worn?what=" + symptom.word().replace(' ', '+') + "\"", "<b>" + symptom.word() + "</b>");
        }
        assertThat(page.split("<svg", -1)).hasSizeGreaterThan(WearingSymptom.values().length);
    }

    @Test
    void aSymptomWithTwoCuresAsksFirstAndThenShowsTheChangeBesideTheOneBefore() throws Exception {
        String asked =
                PAGE.visitor().get("makes/demo/worn?what=crotch+hangs+low").body();
        assertThat(asked)
                .contains("Is the leg at its limit", "answer=yes", "answer=no")
                .doesNotContain("class=\"before\"");
        String shown = PAGE.visitor()
                .get("makes/demo/worn?what=crotch+hangs+low&answer=no")
                .body();
        assertThat(shown)
                .contains("<li>change: front waist: -0.5 cm", "class=\"before\"")
                .doesNotContain("Make version", "role=\"slider\"");
    }

    @Test
    @Tag("slow")
    void theVersionThatIsMadeSaysWhatTheCommandWrites() throws Exception {
        String make = PAGE.visitor().make();
        String before = PAGE.visitor().text(make);
        String shown = PAGE.visitor().get(make + "/worn?what=legs+too+short").body();
        assertThat(shown).contains("Make version 2");
        assertThat(post(make + "/worn", "what", "legs too short", "seen", "1").statusCode())
                .isEqualTo(303);
        MakeFile read = Make.read("make", before.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        String day = java.time.LocalDate.now(java.time.ZoneId.systemDefault()).toString();
        String written = Wearing.of(read, "legs too short", "", day)
                .written(before, new Findings("make"))
                .orElseThrow();
        assertThat(PAGE.visitor().text(make)).isEqualTo(written);
        assertThat(PAGE.visitor().get(make + "/versions").body()).contains("Version 2");
    }

    @Test
    void whatIsNotInThePatternChangesNothingAndSaysSo() throws Exception {
        String make = PAGE.visitor().make();
        String shown = PAGE.visitor().get(make + "/worn?what=hem+wavy").body();
        assertThat(shown)
                .contains("This is in the sewing", "<li>change: none: the pattern stays as it is</li>")
                .doesNotContain("Make version");
        assertThat(post(make + "/worn", "what", "hem wavy", "seen", "1").statusCode())
                .isEqualTo(422);
    }

    @Test
    @Tag("slow")
    void marksOnAFirstPairTeachBeforeAnythingIsKept() throws Exception {
        String make = PAGE.visitor().make();
        String before = PAGE.visitor().text(make);
        HttpResponse<String> look =
                post(make + "/worn/marks", "first pair.knee along", "6.4", "do", "look", "seen", "1");
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("Keep what they teach", "value=\"6.4\"");
        assertThat(PAGE.visitor().text(make)).isEqualTo(before);
        assertThat(post(make + "/worn/marks", "first pair.knee along", "6.4", "do", "keep", "seen", "1")
                        .statusCode())
                .isEqualTo(303);
        assertThat(PAGE.visitor().text(make)).contains("learnt:");
        HttpResponse<String> none = post(make + "/worn/marks", "do", "keep", "seen", "2");
        assertThat(none.statusCode()).isEqualTo(422);
        HttpResponse<String> wrong = post(make + "/worn/marks", "first pair.knee along", "<b>x</b>", "do", "look");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).doesNotContain("<b>x</b>");
    }

    @Test
    @Tag("slow")
    void whoWasSecondIsToldAndTheDemoIsNobodysToChange() throws Exception {
        String make = PAGE.visitor().make();
        assertThat(post(make + "/worn", "what", "legs too long", "seen", "1").statusCode())
                .isEqualTo(303);
        assertThat(post(make + "/worn", "what", "waist too high", "seen", "1").statusCode())
                .isEqualTo(409);
        assertThat(PAGE.visitor().get(make + "/worn?what=it+bites").statusCode())
                .isEqualTo(404);
        assertThat(post("makes/demo/worn", "what", "legs too long").statusCode())
                .isEqualTo(404);
        assertThat(post("makes/demo/worn/marks", "do", "keep").statusCode()).isEqualTo(404);
    }
}
