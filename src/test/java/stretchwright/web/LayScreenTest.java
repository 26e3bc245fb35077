package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.web.form.Form;
import stretchwright.workroom.store.Address;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The lay over real HTTP: pieces put by hand, a search as a job, what is told of the cloth. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class LayScreenTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @TempDir
    private Path folder;

    private Server server() {
        return Server.start(new Address.Folder(folder.resolve("room")), 0).orElseThrow();
    }

    /** Laid on a remnant with flaws: a search comes down to it step by step, and not to the floor. */
    private static String remnant(Visitor visitor) throws Exception {
        Map<String, List<String>> form =
                new LinkedHashMap<>(Form.of(Files.readString(Path.of("examples/from-a-remnant.yaml")))
                        .typed());
        form.put("name", List.of("Remnant " + visitor.get("").body().split("/makes/").length));
        return Visitor.at(visitor.post(form));
    }

    private interface Visit {
        void at(Visitor visitor, String make) throws Exception;
    }

    private void visited(Visit visit) throws Exception {
        Server server = server();
        try {
            Visitor visitor = new Visitor(server);
            visit.at(visitor, Visitor.at(visitor.post(Visitor.example())));
        } finally {
            server.stop();
        }
    }

    private static HttpResponse<String> press(Visitor visitor, String make, String... fields) throws Exception {
        return post(visitor, make + "/lay", fields);
    }

    private static HttpResponse<String> post(Visitor visitor, String path, String... fields) throws Exception {
        Map<String, List<String>> form = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            form.computeIfAbsent(fields[i], k -> new ArrayList<>()).add(fields[i + 1]);
        }
        return visitor.post(path, form);
    }

    /** What the page carries in the hidden field of that name. */
    private static String hidden(String page, String name) {
        Matcher m = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
        assertThat(m.find()).as(name).isTrue();
        return m.group(1).replace("&quot;", "\"").replace("&#34;", "\"").replace("&amp;", "&");
    }

    /** Where the pieces lie now. */
    private static ObjectNode placed(Visitor visitor, String make) throws Exception {
        HttpResponse<String> page = press(visitor, make, "do", "move", "piece", "leg 1", "dx", "0", "dy", "0");
        assertThat(page.statusCode()).isEqualTo(200);
        return (ObjectNode) JSON.readTree(hidden(page.body(), "placed"));
    }

    /** Every piece far beyond the one before it: it holds, and wants to be shorter. */
    private static String spread(ObjectNode placed) {
        ArrayNode spots = (ArrayNode) placed.get("placements");
        for (int i = 0; i < spots.size(); i++) {
            ObjectNode spot = (ObjectNode) spots.get(i);
            spot.put("y", spot.get("y").asDouble() + 1500 * i);
        }
        return placed.toString();
    }

    private static double now(String page) {
        Matcher m = Pattern.compile(">now ([0-9.]+) cm<").matcher(page);
        assertThat(m.find()).isTrue();
        return Double.parseDouble(m.group(1));
    }

    /** Until so many have come that tell a length, or it is over. */
    private static List<String> events(Server server, String make, int most) throws Exception {
        HttpRequest request = new Visitor(server)
                .request(make + "/lay/events")
                .header("Accept", "text/event-stream")
                .build();
        List<String> out = new ArrayList<>();
        HttpResponse<Stream<String>> answer =
                HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofLines());
        try (Stream<String> lines = answer.body()) {
            for (Iterator<String> all = lines.iterator(); out.size() < most && all.hasNext(); ) {
                String line = all.next();
                if (line.startsWith("data:") && line.contains("\"mm\"")) {
                    out.add(line.substring(5).strip());
                }
            }
        }
        return out;
    }

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
    void aSearchComesOnAsEventsIsNeverLongerAndStaysWhereItIsStopped() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        double stopped;
        try {
            String far = spread(placed(visitor, make));
            assertThat(press(visitor, make, "do", "keep", "placed", far).statusCode())
                    .isEqualTo(303);
            double long0 = now(visitor.get(make + "/lay").body());
            assertThat(press(visitor, make, "do", "search").statusCode()).isEqualTo(303);
            List<String> events = events(server, make, 4);
            List<Double> lengths = events.stream()
                    .map(JSON::readTree)
                    .filter(e -> e.has("mm"))
                    .map(e -> e.get("mm").asDouble())
                    .toList();
            assertThat(lengths).hasSizeGreaterThanOrEqualTo(2).isSortedAccordingTo((a, b) -> Double.compare(b, a));
            assertThat(lengths.get(0)).isLessThan(10 * long0);
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains("Good enough, stop", "data-looking=\"yes\"", "Still looking");
            assertThat(press(visitor, make, "do", "stop", "job", "no-such-job").statusCode())
                    .isEqualTo(422);
            assertThat(press(visitor, make, "do", "stop", "job", hidden(page, "job"))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(press(visitor, make, "do", "stop", "job", hidden(page, "job"))
                            .statusCode())
                    .isEqualTo(422);
            stopped = now(visitor.get(make + "/lay").body());
            assertThat(10 * stopped).isLessThanOrEqualTo(lengths.get(lengths.size() - 1) + 1);
            assertThat(events(server, make, 1).get(0)).contains("cancelled");
        } finally {
            server.stop();
        }
        Server again = server();
        try {
            assertThat(now(new Visitor(again).get(make + "/lay").body())).isEqualTo(stopped);
        } finally {
            again.stop();
        }
    }

    @Test
    void aSearchGoesOnOverARestartAndAnotherWaitsInLine() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        String other = remnant(visitor);
        double before;
        try {
            for (String m : List.of(make, other)) {
                press(visitor, m, "do", "keep", "placed", spread(placed(visitor, m)));
            }
            press(visitor, make, "do", "search");
            before = JSON.readTree(events(server, make, 2).get(1)).get("mm").asDouble();
            press(visitor, other, "do", "search");
            assertThat(visitor.get(other + "/lay").body()).contains("Second in line");
        } finally {
            server.stop();
        }
        Server again = server();
        try {
            List<String> events = events(again, make, 2);
            assertThat(JSON.readTree(events.get(0)).get("mm").asDouble()).isLessThanOrEqualTo(before);
            assertThat(JSON.readTree(events.get(events.size() - 1))
                            .get("reached")
                            .asLong())
                    .isGreaterThan(60);
            assertThat(new Visitor(again).get(other + "/lay").body()).contains("Second in line");
        } finally {
            again.stop();
        }
    }

    @Test
    void theSearchGoesRoundWhatIsPinned() throws Exception {
        Server server = server();
        try {
            Visitor visitor = new Visitor(server);
            String make = remnant(visitor);
            String far = spread(placed(visitor, make));
            double y = spot(far, "cuff 1");
            assertThat(press(visitor, make, "do", "search", "placed", far, "pinned", "cuff 1")
                            .statusCode())
                    .isEqualTo(303);
            events(server, make, 3);
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains("pin-head", ", pinned");
            press(visitor, make, "do", "stop", "job", hidden(page, "job"));
            assertThat(spot(placed(visitor, make).toString(), "cuff 1")).isEqualTo(y);
            assertThat(spot(placed(visitor, make).toString(), "waistband 1")).isNotEqualTo(spot(far, "waistband 1"));
        } finally {
            server.stop();
        }
    }

    private static double spot(String placed, String id) {
        for (var s : JSON.readTree(placed).get("placements")) {
            if ((s.get("piece").asString() + " " + s.get("copy").asInt()).equals(id)) {
                return s.get("y").asDouble();
            }
        }
        throw new AssertionError(id);
    }

    @Test
    void aFlawAndAnOutlineAreKeysOfTheMake() throws Exception {
        visited((visitor, make) -> {
            String seen = hidden(visitor.get(make + "/lay").body(), "seen");
            String at = make + "/lay/cloth";
            String[] flaw = {"do", "flaw", "from left", "30", "from end", "40", "wide", "2", "long", "3"};
            assertThat(post(visitor, at, with(flaw, "seen", seen)).statusCode()).isEqualTo(303);
            assertThat(visitor.get(make + "/make.yaml").body()).contains("flaws:", "from left: 30");
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains(">flaw<", "Not there").contains("ellipse");
            HttpResponse<String> stale = post(visitor, at, with(flaw, "seen", seen));
            assertThat(stale.statusCode()).isEqualTo(422);
            String now = hidden(page, "seen");
            assertThat(post(visitor, at, "do", "outline", "seen", now, "outline", "0 = 0\n147 = 0\n147 = 250\n0 = 260")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(visitor.get(make + "/lay").body()).contains("It fits your remnant");
            now = hidden(visitor.get(make + "/lay").body(), "seen");
            assertThat(post(visitor, at, "do", "no-flaw", "seen", now, "flaw", "1")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(visitor.get(make + "/make.yaml").body()).doesNotContain("flaws:");
        });
    }

    private static String[] with(String[] fields, String... more) {
        return Stream.concat(Stream.of(fields), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void whatIsNoCornerOrFlawIsToldAndChangesNothing() throws Exception {
        visited((visitor, make) -> {
            String before = visitor.get(make + "/make.yaml").body();
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
                assertThat(answer.body()).contains("role=\"alert\"").doesNotContain("<b>x");
            }
            assertThat(visitor.get(make + "/make.yaml").body()).isEqualTo(before);
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
