package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The first questions over HTTP: left and found again, answered twice for people of one name; what hangs on the rail then. */
class FirstQuestionsTest {
    private static final Pattern OUTLINE = Pattern.compile("class=\"outline\" d=\"M([^Z]+)Z\"");
    private static final Pattern WIDE_HIGH = Pattern.compile("viewBox=\"0 0 ([0-9]+) ([0-9]+)\"");

    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static HttpResponse<String> answer(String question, String of, String... pairs) throws Exception {
        Map<String, List<String>> all = new LinkedHashMap<>(Map.of("of", List.of(of), "unit", List.of("cm")));
        for (int i = 0; i < pairs.length; i += 2) {
            all.put(pairs[i], List.of(pairs[i + 1]));
        }
        return PAGE.visitor().post("new/" + question, all);
    }

    private static String begun(String name) throws Exception {
        HttpResponse<String> first =
                answer("1", "", "wearer.name", name, "wearer.figure", "woman", "style.leg", "ankle");
        return Visitor.at(first).replaceAll(".*of=", "");
    }

    private static String made(String name, String stature) throws Exception {
        String of = begun(name);
        answer("2", of, "wearer.measurements.stature", stature);
        return Visitor.at(answer("8", of, "do", "none"));
    }

    private static String linked(String page, String shelf) {
        return Visitor.found(page, "href=\"/(" + shelf + "/[0-9a-f-]{36})");
    }

    @Test
    void aNewMakeThatWasLeftIsFoundAgainWhereItWasLeft() throws Exception {
        String of = begun("Wil");
        answer("2", of, "wearer.measurements.stature", "171");
        assertThat(PAGE.visitor().get("").body())
                .contains("A new make for Wil is begun: question 3 of 8 is next.", "href=\"/new/3?of=" + of + "\"");
        assertThat(answer("8", of, "do", "none").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().get("").body()).doesNotContain("is begun");
    }

    @Test
    void anotherPersonOfTheSameNameLiesBesideTheFirst() throws Exception {
        made("Ann", "170");
        String other = made("Ann", "150");
        assertThat(PAGE.visitor().text(other)).contains("stature: 150");
        String start = PAGE.visitor().get("").body();
        assertThat(start).contains("<bdi>Ann</bdi>", "<bdi>Ann 2</bdi>");
        String wearer = linked(start.substring(start.indexOf("<h3>Wearers")), "wearers");
        assertThat(PAGE.visitor().get(wearer).body()).contains("Ann 2", "150");
        made("Ann", "150");
        assertThat(PAGE.visitor().get("").body()).contains("Ann, first pair 3").doesNotContain("Ann 3");
    }

    @Test
    void whatIsNoLongerThanTheClothThatIsHeldIsAskedAboutAndNotTakenForAShare() throws Exception {
        String of = begun("Kim");
        answer("2", of, "wearer.measurements.stature", "165");
        for (String typed : List.of("90", "100", "1.6")) {
            HttpResponse<String> answer =
                    answer("8", of, "fabric.stretch across", typed, "fabric.stretch along", "140");
            assertThat(answer.statusCode()).as(typed).isEqualTo(422);
            assertThat(answer.body()).contains(typed + " is no longer than what you hold");
        }
        String make = Visitor.at(answer("8", of, "fabric.stretch across", "160", "fabric.stretch along", "40 %"));
        assertThat(PAGE.visitor().text(make)).contains("60.0 %", "40 %");
    }

    @Test
    void whatHangsOnTheRailIsSeenWhole() throws Exception {
        made("Tall", "196");
        made("Small", "142");
        String start = PAGE.visitor().get("").body();
        Matcher frame = WIDE_HIGH.matcher(start.substring(start.indexOf("class=\"outline\"") - 100));
        assertThat(frame.find()).isTrue();
        Matcher outline = OUTLINE.matcher(start);
        int legs = 0;
        while (outline.find()) {
            legs++;
            for (String point : outline.group(1).split("L")) {
                String[] at = point.split(" ");
                assertThat(Double.parseDouble(at[0])).isBetween(0.0, Double.parseDouble(frame.group(1)));
                assertThat(Double.parseDouble(at[1])).isBetween(0.0, Double.parseDouble(frame.group(2)));
            }
        }
        assertThat(legs).isGreaterThanOrEqualTo(2);
    }
}
