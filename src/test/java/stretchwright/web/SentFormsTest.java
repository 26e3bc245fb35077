package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import stretchwright.ground.Document;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.web.form.Form;

/** What a sent form is answered with: findings where they belong, nothing dropped in silence. */
class SentFormsTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    /** Those that a make cannot be without, in the form's own words; nothing is said of a field that may be left empty. */
    @Test
    void onTheEmptyFormTheNeededFieldsAreMarked() throws Exception {
        HttpResponse<String> answer = PAGE.visitor().post(Map.of());
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(wrong(answer.body()))
                .containsExactlyInAnyOrder(
                        "name",
                        "unit",
                        "wearer-figure",
                        "wearer-measurements",
                        "fabric-usable-width",
                        "fabric-stretch-across",
                        "fabric-stretch-along");
        assertThat(answer.body())
                .contains("href=\"#wearer-measurements\">Measures of the wearer</a>: Fill in at least one of these.")
                .contains(
                        "is missing. Fill it in, for example 60 %; or one of these instead: Fold test across, Wrapped round the hip,")
                .doesNotContain("{figure", "usable width: 1", "stretch across:", "[100");
    }

    @Test
    void whatAStepComesAfterIsFoundAtThatField() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("sewing.extra.1.name", List.of("name tape"));
        typed.put("sewing.extra.1.minutes", List.of("3"));
        typed.put("sewing.extra.1.after", List.of("bogus"));
        assertThat(wrong(refused(typed))).containsExactly("sewing-extra-1-after");
    }

    @Test
    void contrastsThatTakeEveryPieceAreToldAtTheirHeading() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        MakeFile make = Make.read("x", new Form(typed).makeText().getBytes(StandardCharsets.UTF_8));
        String pieces = stretchwright.make.Session.of(make).pattern().pieces().stream()
                .map(p -> p.name().word())
                .distinct()
                .collect(Collectors.joining("; "));
        typed.put("fabric.contrasts.1.name", List.of("Rust"));
        typed.put("fabric.contrasts.1.pieces", List.of(pieces));
        assertThat(wrong(refused(typed))).containsExactly("fabric-contrasts");
    }

    @Tag("slow")
    @Test
    void onlyTheTickedFilesAreListedZippedAndReported() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("print.files", List.of("lay", "fit"));
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        String at = Visitor.at(answer);
        String page = PAGE.visitor().get(at + "/print").body();
        Made made = stretchwright.make.Session.of(
                        Make.read("form", PAGE.visitor().bytes(at + "/make.yaml")))
                .made(java.util.Set.of(stretchwright.print.kit.FileGroup.LAY, stretchwright.print.kit.FileGroup.FIT));
        List<String> names = made.documents().stream().map(Document::name).toList();
        assertThat(names).contains("lay.pdf", "report.json").doesNotContain("pattern.dxf");
        assertThat(java.util.regex.Pattern.compile(" download=\"([^\"]*)\"")
                        .matcher(page)
                        .results()
                        .map(m -> m.group(1)))
                .containsExactlyElementsOf(names);
        assertThat(Visitor.unzipped(PAGE.visitor().bytes(at + "/all.zip")).keySet())
                .containsExactlyInAnyOrderElementsOf(
                        java.util.stream.Stream.concat(names.stream(), java.util.stream.Stream.of("make.yaml"))
                                .toList());
        assertThat(PAGE.visitor().bytes(at + "/file/report.json"))
                .isEqualTo(made.report().bytes());
        assertThat(PAGE.visitor().get(at + "/file/pattern.svg").statusCode())
                .as("a drawing on the page itself")
                .isEqualTo(200);
    }

    @Test
    void whatTheFormDoesNotHaveIsToldOnTop() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("foo", List.of("<b>bar"));
        typed.put("style.legs", List.of("1"));
        typed.put("stretchwright", List.of("2"));
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "<li>foo: is not a field of this form.",
                        "<li>style.legs: is not a field of this form. Is \"style.leg\" meant?",
                        "<li>stretchwright: is not a field of this form.");
        assertThat(wrong(answer.body())).isEmpty();
    }

    @Test
    void aFieldThatIsSentTwiceIsAFinding() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("name", List.of("One", "Two"));
        typed.put("style.pockets.1.kind", List.of("phone"));
        typed.put("style.pockets.01.kind", List.of("knee pad"));
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(wrong(answer.body())).contains("name", "style-pockets-1-kind");
        assertThat(answer.body()).contains("is filled in more than once. Keep one of them.");
    }

    @Test
    void aFindingIsToldOnceAndInTheFormOfItsField() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("fabric.load across", List.of("20 %, 3.1 N; 40 %, 6.9 N"));
        String page = refused(typed);
        assertThat(wrong(page)).containsExactly("fabric-load-across");
        assertThat(page.split("a reading is a pair", -1))
                .as("once on top and once at the field")
                .hasSize(3);
        assertThat(page).contains("20 % = 3.1 N; 40 % = 6.9 N").doesNotContain("[[20 %");
    }

    private static String refused(Map<String, List<String>> typed) throws Exception {
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        return answer.body();
    }

    /** What is marked as wrong, by its address on the page. */
    private static List<String> wrong(String page) {
        return java.util.regex.Pattern.compile("<strong class=\"wrong\" id=\"([^\"]*)-wrong\"")
                .matcher(page)
                .results()
                .map(m -> m.group(1))
                .toList();
    }
}
