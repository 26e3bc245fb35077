package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The lay over real HTTP: how it is drawn, and what is told of the cloth. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class LayScreenTest extends LayVisits {
    @Test
    void theClothIsDrawnWithItsPiecesForBothScreens() throws Exception {
        visited((visitor, make) -> {
            HttpResponse<String> page = visitor.get(make + "/lay");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body())
                    .contains("class=\"wide laid\"", "class=\"narrow laid\"")
                    .contains("data-id=\"leg 1\"", "data-id=\"cuff 1\"")
                    .contains("this side up", "What to buy", "It fits the cloth on hand")
                    .doesNotContain("style=", ">lay.");
        });
    }

    @Test
    void aFlawAndAnOutlineAreKeysOfTheMake() throws Exception {
        visited((visitor, make) -> {
            String seen = hidden(visitor.get(make + "/lay").body(), "seen");
            String at = make + "/lay/cloth";
            String[] flaw = {"do", "flaw", "from left", "30", "from end", "40", "wide", "2", "long", "3"};
            assertThat(post(visitor, at, with(flaw, "seen", seen)).statusCode()).isEqualTo(303);
            assertThat(visitor.text(make)).contains("flaws:", "from left: 30");
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains(">flaw<", "Not there").contains("ellipse");
            HttpResponse<String> stale = post(visitor, at, with(flaw, "seen", seen));
            assertThat(stale.statusCode()).isEqualTo(409);
            String now = hidden(page, "seen");
            assertThat(post(visitor, at, "do", "outline", "seen", now, "outline", "0 = 0\n147 = 0\n147 = 250\n0 = 260")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(visitor.get(make + "/lay").body()).contains("It fits your remnant");
            now = hidden(visitor.get(make + "/lay").body(), "seen");
            assertThat(post(visitor, at, "do", "no-flaw", "seen", now, "flaw", "1")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(visitor.text(make)).doesNotContain("flaws:");
        });
    }

    @Test
    void whatIsNoCornerOrFlawIsToldAndChangesNothing() throws Exception {
        visited((visitor, make) -> {
            String before = visitor.text(make);
            String seen = hidden(visitor.get(make + "/lay").body(), "seen");
            String at = make + "/lay/cloth";
            List<String[]> wrong = List.of(
                    new String[] {"do", "flaw", "from left", "30"},
                    new String[] {"do", "flaw", "from left", "<b>x", "from end", "1", "wide", "1", "long", "1"},
                    new String[] {"do", "flaw", "from left", "NaN", "from end", "1", "wide", "1", "long", "1"},
                    new String[] {"do", "flaw", "from left", "1e99", "from end", "1", "wide", "1", "long", "1"},
                    new String[] {"do", "no-flaw", "flaw", "7"},
                    new String[] {"do", "outline", "outline", "0 = 0\n10 = 10"},
                    new String[] {"do", "outline", "outline", "'; DROP TABLE thing"},
                    new String[] {"do", "way", "way", "on the ceiling"},
                    new String[] {"do", "nothing"},
                    new String[] {});
            for (String[] fields : wrong) {
                HttpResponse<String> answer = post(visitor, at, with(fields, "seen", seen));
                assertThat(answer.statusCode()).as("%s", List.of(fields)).isEqualTo(422);
                assertThat(answer.body()).contains("role=\"alert\"").doesNotContain("><b>x");
            }
            assertThat(visitor.text(make)).isEqualTo(before);
        });
    }

    @Test
    void whatIsRefusedOfTheClothStandsInItsFieldsStill() throws Exception {
        visited((visitor, make) -> {
            String seen = hidden(visitor.get(make + "/lay").body(), "seen");
            String at = make + "/lay/cloth";
            String flaw = post(visitor, at, "do", "flaw", "seen", seen, "from left", "30,5", "wide", "two")
                    .body();
            assertThat(flaw)
                    .contains("name=\"from left\" value=\"30,5\"", "name=\"wide\" value=\"two\"", "id=\"flaws\" open")
                    .doesNotContain("id=\"outline\" open");
            String corners = "0 = 0\n147 = 0\n147 = here";
            String outline = post(visitor, at, "do", "outline", "seen", seen, "outline", corners)
                    .body();
            assertThat(outline).contains(">" + corners + "</textarea>", "id=\"outline\" open");
        });
    }
}
