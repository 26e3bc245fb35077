package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Pieces put by hand, over real HTTP. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class LayByHandTest extends LayVisits {
    @Test
    void whatOverlapsIsToldAndCannotBeKept() throws Exception {
        visited((visitor, make) -> {
            HttpResponse<String> page = press(visitor, make, "do", "move", "piece", "cuff 1", "dx", "0", "dy", "-12");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).containsPattern("<h2>[^<]* overlaps [^<]* by [0-9.]+ (mm|cm)[.]</h2>");
            assertThat(page.body()).contains("wrongly", "So it cannot be cut").doesNotContain("Keep this lay");
            HttpResponse<String> kept = press(visitor, make, "do", "keep", "placed", hidden(page.body(), "placed"));
            assertThat(kept.statusCode()).isEqualTo(422);
            assertThat(kept.body()).contains("This lay cannot be kept", "overlaps");
            assertThat(visitor.get(make + "/lay").body()).doesNotContain("overlaps");
        });
    }

    @Test
    void aLayPutByHandIsKeptAndIsTheOneOfThePapersUntilItNoMoreHolds() throws Exception {
        visited((visitor, make) -> {
            double before = now(visitor.get(make + "/lay").body());
            HttpResponse<String> moved = press(visitor, make, "do", "far", "by", "10", "piece", "cuff 1");
            moved = press(
                    visitor,
                    make,
                    "do",
                    "far",
                    "by",
                    "10",
                    "piece",
                    "cuff 1",
                    "placed",
                    hidden(moved.body(), "placed"));
            moved = press(
                    visitor,
                    make,
                    "do",
                    "move",
                    "dy",
                    "200",
                    "piece",
                    "cuff 1",
                    "placed",
                    hidden(moved.body(), "placed"));
            assertThat(moved.body()).contains("Keep this lay", "longer than before");
            HttpResponse<String> kept = press(visitor, make, "do", "keep", "placed", hidden(moved.body(), "placed"));
            assertThat(kept.statusCode()).isEqualTo(303);
            String page = visitor.get(make + "/lay").body();
            assertThat(now(page)).isGreaterThan(before + 10);
            assertThat(page).contains("Take the first lay again");
            double length = JSON.readTree(
                            visitor.get(make + "/file/report.json").body())
                    .get("lay")
                    .get("length")
                    .asDouble();
            assertThat(length / 10).isEqualTo(now(page), within(0.06));
            assertThat(press(visitor, make, "do", "usual").statusCode()).isEqualTo(303);
            assertThat(now(visitor.get(make + "/lay").body())).isEqualTo(before);
        });
    }

    @Test
    void whatCannotBeDoneByHandIsToldAndChangesNothing() throws Exception {
        visited((visitor, make) -> {
            String good = placed(visitor, make).toString();
            List<String[]> wrong = List.of(
                    new String[] {"do", "move", "piece", "sleeve 1", "dx", "1"},
                    new String[] {"do", "move", "piece", "<script>", "dx", "1"},
                    new String[] {"do", "move", "piece", "leg 1", "dx", "NaN"},
                    new String[] {"do", "move", "piece", "leg 1", "dx", "1e9"},
                    new String[] {"do", "move", "piece", "leg 1", "dx", "99999"},
                    new String[] {"do", "left"},
                    new String[] {"do", "fly", "piece", "leg 1"},
                    new String[] {"do", "turn", "piece", "leg 1"},
                    new String[] {"do", "keep"},
                    new String[] {"do", "keep", "placed", "not json"},
                    new String[] {"do", "keep", "placed", "{}"},
                    new String[] {"do", "keep", "placed", good.replace("\"leg\"", "\"sleeve\"")},
                    new String[] {"do", "keep", "placed", good.replaceFirst("\"y\" ?: ?[0-9.]+", "\"y\":1e300")},
                    new String[] {"do", "keep", "placed", good.replaceFirst("\"layers\" ?: ?2", "\"layers\":1")},
                    new String[] {"do", "keep", "placed", good.replaceFirst("\"copy\" ?: ?1", "\"copy\":9")},
                    new String[] {"do", "search", "pinned", "sleeve 1"},
                    new String[] {"do", "stop", "job", "1"},
                    new String[] {});
            for (String[] fields : wrong) {
                HttpResponse<String> answer = press(visitor, make, fields);
                assertThat(answer.statusCode()).as("%s", List.of(fields)).isEqualTo(422);
                assertThat(answer.body())
                        .contains("role=\"alert\"")
                        .doesNotContain("<script>alert", "value=\"<script>");
            }
            assertThat(visitor.get(make + "/lay").body()).doesNotContain("Take the first lay again");
            assertThat(visitor.get(make + "/lay?cloth=7").statusCode()).isEqualTo(404);
            assertThat(visitor.get("makes/none/lay/events").statusCode()).isEqualTo(404);
            assertThat(visitor.get(make + "/lay/events?cloth=7").statusCode()).isEqualTo(404);
            assertThat(visitor.get(make + "/lay?cloth=x").statusCode()).isEqualTo(404);
            assertThat(visitor.get(make + "/lay?piece=%3Cb%3E").statusCode()).isEqualTo(200);
            assertThat(press(visitor, "makes/demo", "do", "search").statusCode())
                    .isEqualTo(422);
            assertThat(press(visitor, "makes/none", "do", "search").statusCode())
                    .isEqualTo(404);
        });
    }

    @Test
    void aLayThatWasKeptIsUsedAsLongAsItHolds() throws Exception {
        visited((visitor, make) -> {
            press(visitor, make, "do", "keep", "placed", spread(placed(visitor, make)));
            double far = now(visitor.get(make + "/lay").body());
            String seen = hidden(visitor.get(make + "/lay").body(), "seen");
            assertThat(post(visitor, make + "/change", "seen", seen, "style.hold", "light")
                            .statusCode())
                    .isEqualTo(303);
            String page = visitor.get(make + "/lay").body();
            assertThat(now(page)).isLessThan(far);
            assertThat(page).contains("The lay that you kept no more holds");
            // and with the pieces as they were it is there again
            String back = hidden(page, "seen");
            assertThat(post(visitor, make + "/change", "seen", back, "style.hold", "medium")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(now(visitor.get(make + "/lay").body())).isEqualTo(far);
        });
    }
}
