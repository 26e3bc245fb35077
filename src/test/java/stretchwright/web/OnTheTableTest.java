package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A make on the table over HTTP: changed, undone, kept, by two windows at once; and the first questions with bad answers. */
class OnTheTableTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static HttpResponse<String> change(String at, String seen, String key, String value) throws Exception {
        return PAGE.visitor().post(at + "/change", Map.of("seen", List.of(seen), key, List.of(value)));
    }

    @Test
    void whatIsChangedIsUndoneAndDoneAgainWithoutEnd() throws Exception {
        String at = PAGE.visitor().make();
        String first = PAGE.visitor().text(at);
        assertThat(change(at, PAGE.visitor().seen(at), "style.front waist", "-10 mm")
                        .statusCode())
                .isEqualTo(303);
        String second = PAGE.visitor().text(at);
        assertThat(change(at, PAGE.visitor().seen(at), "style.hold", "firm").statusCode())
                .isEqualTo(303);
        String third = PAGE.visitor().text(at);
        assertThat(List.of(first, second, third)).doesNotHaveDuplicates();
        assertThat(PAGE.visitor().get(at).body()).contains("Undo: Hold: firm");
        PAGE.visitor().post(at + "/back", Map.of());
        assertThat(PAGE.visitor().text(at)).isEqualTo(second);
        assertThat(PAGE.visitor().get(at).body()).contains("Undo: Waist in front 1.0 cm lower", "Again: Hold: firm");
        PAGE.visitor().post(at + "/back", Map.of());
        PAGE.visitor().post(at + "/back", Map.of());
        assertThat(PAGE.visitor().text(at)).isEqualTo(first);
        PAGE.visitor().post(at + "/forth", Map.of());
        PAGE.visitor().post(at + "/forth", Map.of());
        PAGE.visitor().post(at + "/forth", Map.of());
        assertThat(PAGE.visitor().text(at)).isEqualTo(third);
    }

    @Test
    void whatIsOnlyTriedIsNotStored() throws Exception {
        String at = PAGE.visitor().make();
        String before = PAGE.visitor().text(at);
        HttpResponse<String> tried =
                PAGE.visitor().post(at + "/try", Map.of("seen", List.of("1"), "style.shifts.hem", List.of("15 mm")));
        assertThat(tried.statusCode()).isEqualTo(200);
        assertThat(tried.body()).contains("1.5 cm longer", "class=\"before\"");
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
    }

    @Test
    void aVersionThatIsKeptHasANumberAndComesBack() throws Exception {
        String at = PAGE.visitor().make();
        String first = PAGE.visitor().text(at);
        change(at, PAGE.visitor().seen(at), "style.front waist", "-20 mm");
        assertThat(PAGE.visitor().get(at).body())
                .contains("Keep as version 2", "Tacking: version 1", "class=\"before\"");
        PAGE.visitor().post(at + "/keep", Map.of());
        assertThat(PAGE.visitor().get(at).body()).doesNotContain("Keep as version");
        String versions = PAGE.visitor().get(at + "/versions").body();
        assertThat(versions).contains("Version 2", "Version 1", "2.0 cm lower");
        PAGE.visitor().post(at + "/stand", Map.of("number", List.of("1")));
        assertThat(PAGE.visitor().text(at)).isEqualTo(first);
    }

    @Test
    void theSecondOfTwoWindowsIsToldAndBothAreKept() throws Exception {
        String at = PAGE.visitor().make();
        String seen = PAGE.visitor().seen(at);
        assertThat(change(at, seen, "style.front waist", "-10 mm").statusCode()).isEqualTo(303);
        HttpResponse<String> second = change(at, seen, "style.front waist", "15 mm");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body())
                .contains("Changed in another window", "style.front waist", "-10", "15", "Keep mine as version 2");
        assertThat(PAGE.visitor().text(at)).contains("-10 mm");
        String mine = Visitor.found(second.body(), "name=\"number\" value=\"([0-9]+)\"");
        PAGE.visitor().post(at + "/stand", Map.of("number", List.of(mine)));
        assertThat(PAGE.visitor().text(at)).contains("15 mm").doesNotContain("-10 mm");
    }

    @Test
    void onEveryScreenTheSecondOfTwoWindowsIsToldInTheSameWords() throws Exception {
        String at = PAGE.visitor().make();
        String seen = PAGE.visitor().seen(at);
        assertThat(change(at, seen, "style.front waist", "-10 mm").statusCode()).isEqualTo(303);
        Map<String, Map<String, List<String>>> stale = Map.of(
                "/lay/cloth", Map.of("seen", List.of(seen), "do", List.of("way"), "way", List.of("open")),
                "/print/paper", Map.of("seen", List.of(seen), "print.paper", List.of("A3")),
                "/worn", Map.of("seen", List.of(seen), "what", List.of("legs too short")));
        for (Map.Entry<String, Map<String, List<String>>> one : stale.entrySet()) {
            HttpResponse<String> second = PAGE.visitor().post(at + one.getKey(), one.getValue());
            assertThat(second.statusCode()).as(one.getKey()).isEqualTo(409);
            assertThat(second.body()).as(one.getKey()).contains("Changed in another window", "Keep mine as version ");
        }
        assertThat(PAGE.visitor().text(at)).contains("-10 mm").doesNotContain("A3");
    }

    @Test
    void whatCannotBeIsToldAndLeavesAllAsItWas() throws Exception {
        String at = PAGE.visitor().make();
        String before = PAGE.visitor().text(at);
        for (Map.Entry<String, String> bad : List.of(
                Map.entry("style.front waist", "700 mm"),
                Map.entry("style.front waist", "<script>alert(1)</script>"),
                Map.entry("style.hold", "'; DROP TABLE thing; --"),
                Map.entry("wearer.measurements.hip girth", "NaN"))) {
            HttpResponse<String> answer = change(at, PAGE.visitor().seen(at), bad.getKey(), bad.getValue());
            assertThat(answer.statusCode()).as(bad.toString()).isEqualTo(422);
            assertThat(answer.body()).doesNotContain("<script>alert");
        }
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
        assertThat(change(at, PAGE.visitor().seen(at), "no.such key", "1").statusCode())
                .isEqualTo(303);
        assertThat(PAGE.visitor().get(at).body())
                .as("nothing was changed, so nothing can be undone")
                .doesNotContain("Undo: ");
        assertThat(PAGE.visitor()
                        .post(at + "/stand", Map.of("number", List.of("999")))
                        .statusCode())
                .isEqualTo(404);
        assertThat(PAGE.visitor()
                        .post(at + "/stand", Map.of("number", List.of("x")))
                        .statusCode())
                .isEqualTo(404);
        assertThat(PAGE.visitor().post("makes/none/change", Map.of()).statusCode())
                .isEqualTo(404);
        assertThat(PAGE.visitor()
                        .post("makes/demo/change", Map.of("style.hold", List.of("firm")))
                        .statusCode())
                .as("the demo is nobody's")
                .isIn(404, 422);
        assertThat(PAGE.visitor().text("makes/demo")).contains("hold: medium");
    }

    @Test
    void anotherClothTakesThePlaceOfThisOne() throws Exception {
        Map<String, List<String>> other = Visitor.example();
        other.put("fabric.name", List.of("Moss"));
        other.put("fabric.stretch across", List.of("80 %"));
        other.remove("fabric.load across");
        PAGE.visitor().post(other);
        String at = PAGE.visitor().make();
        String page = PAGE.visitor().get(at + "/other/fabric").body();
        String moss = Visitor.found(page, "value=\"([0-9a-f-]{36})\"><bdi>Moss");
        HttpResponse<String> answer = PAGE.visitor()
                .post(
                        at + "/other/fabric",
                        Map.of("seen", List.of(PAGE.visitor().seen(at)), "thing", List.of(moss)));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).contains("Moss", "80 %");
        assertThat(PAGE.visitor().get(at + "/other/style").statusCode()).isEqualTo(404);
        assertThat(PAGE.visitor()
                        .post(at + "/other/boot", Map.of("thing", List.of(moss)))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void remediesAreAPressAway() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("style.waistband.elastic", List.of("none"));
        String at = Visitor.at(PAGE.visitor().post(typed));
        assertThat(PAGE.visitor().get(at).body()).contains("What would turn it?");
        Matcher offer = Pattern.compile("name=\"(style\\.[^\"]+)\" value=\"([^\"]*)\"")
                .matcher(PAGE.visitor().get(at + "/remedies").body());
        assertThat(offer.find()).isTrue();
        assertThat(change(at, PAGE.visitor().seen(at), offer.group(1), offer.group(2))
                        .statusCode())
                .isEqualTo(303);
        assertThat(PAGE.visitor().get(at).body()).contains("Ready to cut.");
    }

    private static HttpResponse<String> answer(int question, Map<String, String> typed) throws Exception {
        Map<String, List<String>> all = new java.util.LinkedHashMap<>();
        typed.forEach((k, v) -> all.put(k, List.of(v)));
        return PAGE.visitor().post("new/" + question, all);
    }

    @Test
    void badAnswersAreToldBesideTheQuestion() throws Exception {
        assertThat(answer(1, Map.of("wearer.name", "Kit")).statusCode()).isEqualTo(422);
        assertThat(answer(1, Map.of("wearer.figure", "child", "style.leg", "ankle"))
                        .body())
                .contains("of a child the age is needed");
        assertThat(answer(2, Map.of("wearer.measurements.stature", "tall", "unit", "cm"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(answer(2, Map.of("wearer.measurements.stature", "")).body()).contains("or skip it");
        assertThat(answer(10, Map.of("boot.heel girth", "")).body()).contains("never guessed");
        assertThat(answer(7, Map.of("do", "skip")).body()).contains("One of the six measures is needed");
        assertThat(answer(8, Map.of("fabric.stretch across", "160", "do", "next"))
                        .statusCode())
                .isEqualTo(422);
        for (String nothing : List.of("new/0", "new/13", "new/x", "new/1?of=nothing", "new/99999999999999")) {
            assertThat(PAGE.visitor().get(nothing).statusCode()).as(nothing).isEqualTo(404);
        }
        assertThat(answer(2, Map.of("of", "../../x", "wearer.measurements.stature", "165"))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void whileALineIsDraggedOnlyTheDrawingThatIsSeenIsSent() throws Exception {
        String at = PAGE.visitor().make();
        for (String sheet : List.of("wide", "narrow")) {
            String tried = PAGE.visitor()
                    .post(at + "/try", Map.of("sheet", List.of(sheet), "style.shifts.hem", List.of("4 mm")))
                    .body();
            assertThat(Pattern.compile("<svg class=\"(wide|narrow)\"")
                            .matcher(tried)
                            .results()
                            .map(m -> m.group(1)))
                    .containsExactly(sheet);
        }
    }

    @Test
    void aMakeLeadsToWhatIsOnlyEstimatedAndFollowsWhatIsMeasuredThere() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.remove("wearer.measurements.thigh girth");
        String at = Visitor.at(PAGE.visitor().post(typed));
        String page = PAGE.visitor().get(at).body();
        assertThat(page).contains("is estimated, give or take", "/cloths/", "/boots/");
        String why = PAGE.visitor().get(at + "?why=CROTCH_WIDTH").body();
        Matcher link = Pattern.compile("href=\"/(wearers/[^/]+/thigh-girth)\\?for=([^\"]+)\"")
                .matcher(why);
        assertThat(link.find()).isTrue();
        HttpResponse<String> taken =
                PAGE.visitor().post(link.group(1), Map.of("for", List.of(link.group(2)), "once", List.of("58.5")));
        assertThat(taken.statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).contains("58.5");
    }

    @Test
    void theNextMakeTakesOverTheMachinesOfTheOneBefore() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("machines", List.of("overlocker", "coverstitch"));
        typed.put("print.paper", List.of("A3"));
        PAGE.visitor().post(typed);
        assertThat(PAGE.visitor().get("machines").body()).contains("overlocker, coverstitch", "A3");
        HttpResponse<String> first =
                answer(1, Map.of("wearer.name", "Next", "wearer.figure", "woman", "style.leg", "ankle"));
        String of = first.headers().firstValue("Location").orElseThrow().replaceAll(".*of=", "");
        answer(2, Map.of("of", of, "wearer.measurements.stature", "165 cm"));
        String at = Visitor.at(PAGE.visitor().post("new/8", Map.of("of", List.of(of), "do", List.of("none"))));
        assertThat(PAGE.visitor().text(at)).contains("coverstitch", "A3");
    }

    @Test
    void anUndoThatWasMeantForAnotherVersionUndoesNothing() throws Exception {
        String at = PAGE.visitor().make();
        String before = PAGE.visitor().seen(at);
        change(at, before, "style.hold", "firm");
        String text = PAGE.visitor().text(at);
        HttpResponse<String> late = PAGE.visitor().post(at + "/back", Map.of("seen", List.of(before)));
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("nothing was undone");
        assertThat(PAGE.visitor().text(at)).isEqualTo(text);
        assertThat(PAGE.visitor()
                        .post(
                                at + "/back",
                                Map.of("seen", List.of(PAGE.visitor().seen(at))))
                        .statusCode())
                .isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).isNotEqualTo(text);
    }

    /** In a workroom of its own: a make before it would give it its paper. */
    @ParameterizedTest
    @CsvSource({"en-US, Letter", "en-GB, A4"})
    void theSheetsAreThoseOfTheCountry(String language, String paper) throws Exception {
        Server server = Visitor.started();
        try {
            Visitor visitor = new Visitor(server);
            HttpResponse<String> first = visitor.post(
                    "new/1",
                    Map.of(
                            "wearer.figure",
                            List.of("woman"),
                            "style.leg",
                            List.of("ankle"),
                            "wearer.name",
                            List.of("Kit")));
            String of = first.headers().firstValue("Location").orElseThrow().replaceAll(".*of=", "");
            visitor.post("new/2", Map.of("of", List.of(of), "wearer.measurements.stature", List.of("165 cm")));
            String at = Visitor.at(visitor.post(
                    "new/8", Map.of("of", List.of(of), "do", List.of("none")), "Accept-Language", language));
            assertThat(visitor.get(at + "/print").body()).contains("aria-pressed=\"true\">" + paper + "<");
            assertThat(visitor.get(at).body()).contains("Good enough for a test pair.", at + "/file/shop-card.pdf");
        } finally {
            server.stop();
        }
    }

    @Test
    void whatIsTypedIsJudgedBesideTheOthers() throws Exception {
        HttpResponse<String> first =
                answer(1, Map.of("wearer.name", "Kit", "wearer.figure", "woman", "style.leg", "ankle"));
        String of = first.headers().firstValue("Location").orElseThrow().replaceAll(".*of=", "");
        answer(2, Map.of("of", of, "wearer.measurements.stature", "165", "unit", "cm"));
        assertThat(PAGE.visitor().get("new/4?of=" + of).body()).contains("Skipped, it is estimated: about ");
        String look = PAGE.visitor()
                .post(
                        "new/4/look",
                        Map.of(
                                "of",
                                List.of(of),
                                "wearer.measurements.hip girth",
                                List.of("97"),
                                "unit",
                                List.of("cm")))
                .body();
        assertThat(look).contains("We take 97.0 cm.", "is usual");
        assertThat(PAGE.visitor().get("new/4?of=" + of).body()).doesNotContain("value=\"97\"");
    }
}
