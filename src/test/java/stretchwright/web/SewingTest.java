package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The sewing of a make over real HTTP: a step a screen, its place kept for every device. */
class SewingTest {
    private static Server server;
    private static Visitor visitor;
    private static String make;

    @BeforeAll
    static void start() throws Exception {
        server = Visitor.started();
        visitor = new Visitor(server);
        make = visitor.make();
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    @BeforeEach
    void fromTheBeginning() throws Exception {
        visitor.post(make + "/sew/1-machine/here", Map.of());
    }

    @Test
    void doneLeadsThroughAllStepsToTheEndAndEachMachineIsSetUpBeforeItsFirst() throws Exception {
        List<String> seen = new ArrayList<>();
        String at = make + "/sew";
        for (HttpResponse<String> page = visitor.get(at); page.body().contains("id=\"done\""); page = visitor.get(at)) {
            String key = Visitor.found(page.body(), "data-stop=\"([^\"]*)\" data-on");
            seen.add(key);
            assertThat(page.body()).as(key).containsPattern("<h2 id=\"step\"[^>]*>[^<]+</h2>");
            if (key.endsWith("-machine")) {
                assertThat(page.body())
                        .as(key)
                        .contains("Stitch length", "Needle and knife: ", "unplug to thread or to change a needle.");
            }
            at = Visitor.at(done(key, name(page.body())));
        }
        assertThat(seen).hasSizeGreaterThan(10).doesNotHaveDuplicates();
        assertThat(seen.get(0)).endsWith("-machine");
        assertThat(seen.stream().filter(k -> k.endsWith("-machine")).count()).isGreaterThan(1);
        assertThat(at).isEqualTo(make + "/sew/all");
        assertThat(visitor.get(make + "/sew").body()).contains("steps are done.", "Begin again");
        assertThat(visitor.get("").body()).doesNotContain("Go on sewing");
    }

    @Test
    void anyDeviceGoesOnWhereItWasLeft() throws Exception {
        done("7", "");
        assertThat(visitor.get(make + "/sew").body()).contains("data-stop=\"8\" data-on");
        assertThat(visitor.get("").body()).contains("is on the machine, step 8 of ", "Go on sewing", make + "/sew\"");
        visitor.post(make + "/print/paper", Map.of("seen", List.of(""), "print.paper", List.of("A3")));
        assertThat(visitor.get("").body()).as("also of another paper").contains("is on the machine, step 8 of ");
        done("2", "");
        assertThat(visitor.get(make + "/sew").body())
                .as("told late: what was done stays done")
                .contains("data-stop=\"8\" data-on");
        visitor.post(make + "/sew/3/here", Map.of());
        assertThat(visitor.get(make + "/sew").body()).contains("data-stop=\"3\" data-on");
    }

    /** A pocket more comes before the step that was seen. */
    @Tag("slow")
    @Test
    void theStepThatWasSeenIsDoneAlsoWhereItStandsElsewhereNow() throws Exception {
        String name = name(visitor.get(make + "/sew/6").body());
        done("6", name);
        Map<String, List<String>> pocket = Map.of(
                "style.pockets.1.kind", List.of("phone"),
                "style.pockets.1.width", List.of("9"),
                "style.pockets.1.height", List.of("15"));
        Map<String, List<String>> typed = new java.util.LinkedHashMap<>(Visitor.example());
        typed.putAll(pocket);
        String other = Visitor.at(visitor.post(typed));
        HttpResponse<String> moved = visitor.post(other + "/sew/6/done", Map.of("name", List.of(name)));
        String on = Visitor.found(visitor.get(Visitor.at(moved)).body(), "data-stop=\"([0-9]+)[^\"]*\" data-on");
        assertThat(name(visitor.get(other + "/sew/" + (Integer.parseInt(on) - 1))
                        .body()))
                .isEqualTo(name);
    }

    @Test
    void whatThePlanDoesNotHaveIsNotFoundAndNothingIsLost() throws Exception {
        done("2", "");
        for (String step : List.of("0", "999", "abc", "3-machine", "-1", "1e3", "%3Cb%3E", "00004")) {
            assertThat(visitor.get(make + "/sew/" + step).statusCode()).as(step).isEqualTo(404);
            assertThat(done(step, "").statusCode()).as(step).isEqualTo(404);
        }
        assertThat(visitor.get(make + "/sew/999/picture.svg").statusCode()).isEqualTo(404);
        assertThat(visitor.get(make + "/sew/abc/picture.svg").statusCode()).isEqualTo(404);
        assertThat(visitor.get(make + "/sew/2/picture.svg").body())
                .isEqualTo(visitor.get(make + "/file/step-02.svg").body());
        assertThat(done("4", "no such step").statusCode()).isEqualTo(404);
        assertThat(done("4", "<script>alert(1)</script>").statusCode()).isEqualTo(404);
        assertThat(visitor.get("makes/nothing/sew/1").statusCode()).isEqualTo(404);
        assertThat(visitor.get(make + "/sew").body()).contains("data-stop=\"3\" data-on");
    }

    @Test
    void aBrowserMayKeepThisSewingAndNothingElse() throws Exception {
        HttpResponse<String> worker = visitor.get(make + "/sew/worker.js");
        assertThat(worker.headers().firstValue("Service-Worker-Allowed")).hasValue("/" + make + "/sew");
        assertThat(worker.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/javascript");
        assertThat(worker.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("worker-src 'self'")
                .doesNotContain("unsafe");
        String list = visitor.get(make + "/sew/pages.json").body();
        Matcher pages = Pattern.compile("\"(/[^\"]*)\"").matcher(list);
        int count = 0;
        while (pages.find()) {
            count++;
            String page = pages.group(1);
            assertThat(page).matches("/" + make + "/sew.*|/[a-z-]+[.](css|js)");
            assertThat(visitor.get(page.substring(1)).statusCode()).as(page).isEqualTo(200);
        }
        assertThat(count).isGreaterThan(20);
    }

    @Test
    void thePlanIsOnePageToPrintAndOneFileToSend() throws Exception {
        String all = visitor.get(make + "/sew/all").body();
        int steps = all.split("<h3>", -1).length - 1;
        assertThat(steps).isGreaterThan(10);
        assertThat(all).contains("All steps on one page", "href=\"/" + make + "/file/checklist.html\" download");
        String file = visitor.get(make + "/file/checklist.html").body();
        assertThat(file).doesNotContain("src=", "href=");
    }

    @Test
    void ofTheDemoNothingIsKept() throws Exception {
        HttpResponse<String> answer = visitor.post("makes/demo/sew/3/done", Map.of());
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(visitor.get("makes/demo/sew").body()).contains("data-kept=\"\"", "data-stop=\"1-machine\" data-on");
    }

    private HttpResponse<String> done(String key, String name) throws Exception {
        return visitor.post(make + "/sew/" + key + "/done", name.isEmpty() ? Map.of() : Map.of("name", List.of(name)));
    }

    private static String name(String page) {
        return Visitor.found(page, "name=\"name\" value=\"([^\"]*)\"");
    }
}
