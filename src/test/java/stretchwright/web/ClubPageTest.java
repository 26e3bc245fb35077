package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Waiting;
import stretchwright.web.form.Form;

/** Makes laid together as a job, over real HTTP. */
class ClubPageTest {
    private static Server server;
    private static Visitor visitor;
    private static final List<String> MAKES = new ArrayList<>();
    private static String cloth;

    @BeforeAll
    static void start() throws Exception {
        server = Visitor.started();
        visitor = new Visitor(server);
        MAKES.add(visitor.make().replace("makes/", ""));
        cloth = Visitor.found(visitor.get("").body(), "/cloths/([0-9a-f-]{36})\"");
        Form child = Form.of(Files.readString(Path.of("examples/roller-child.yaml")));
        MAKES.add(Visitor.at(visitor.post(child.typed())).replace("makes/", ""));
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    private static HttpResponse<String> club(String chosen, String table) throws Exception {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        typed.put("make", MAKES);
        typed.put("cloth", List.of(chosen));
        typed.put("table", List.of(table));
        return visitor.post("club", typed);
    }

    @Test
    void makesOfTwoClothsAreRefusedAndWhatWasTickedStaysTicked() throws Exception {
        assertThat(visitor.get("club").body()).contains("Saturday rink", "Lay them together");
        HttpResponse<String> two = club("", "");
        assertThat(two.statusCode()).isEqualTo(422);
        assertThat(two.body())
                .contains("One roll is one cloth")
                .containsPattern("value=\"" + MAKES.get(1) + "\" checked");
        assertThat(club(cloth, "<b>long</b>").body())
                .contains("Give the length of the table")
                .doesNotContain("<b>long</b>");
        assertThat(visitor.post("club", Map.of("table", List.of("3"))).body()).contains("Tick the makes");
        assertThat(visitor.post("club", Map.of("make", List.of("nobody"))).statusCode())
                .isEqualTo(404);
        assertThat(club(MAKES.get(0), "").statusCode()).isEqualTo(404);
    }

    @Test
    void aClubIsAJobThatCanBeStopped() throws Exception {
        String at = Visitor.at(club(cloth, ""));
        String page = visitor.get(at).body();
        assertThat(page).contains("It goes on when this page is closed", "hx-get=\"/" + at + "\"");
        assertThat(visitor.post(at + "/stop", Map.of("x", List.of("y"))).statusCode())
                .isEqualTo(303);
        assertThat(visitor.get(at).body()).contains("Stopped").doesNotContain("hx-get");
        assertThat(visitor.get("club").body()).contains("href=\"/" + at + "\"");
        assertThat(visitor.get("club/nobody").statusCode()).isEqualTo(404);
        assertThat(visitor.get(at + "/file/club.json").statusCode()).isEqualTo(404);
    }

    @Test
    @Tag("slow")
    void whatIsLaidTogetherIsShownWithItsTotalsAndAListToCutBy() throws Exception {
        String at = Visitor.at(club(cloth, "4"));
        String page = Waiting.until(Duration.ofMinutes(1), () -> visitor.get(at).body(), p -> p.contains("Table 1"));
        assertThat(page).contains("2 pairs lie on", "Each alone would take", "Rowan", "Kit", "List to cut by");
        assertThat(new String(visitor.bytes(at + "/file/club.pdf"), java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF");
    }
}
