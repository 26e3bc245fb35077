package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.web.form.Form;
import stretchwright.workroom.store.Address;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Who visits the lay of a make, and what is read there. */
abstract class LayVisits {
    static final JsonMapper JSON = JsonMapper.builder().build();

    @TempDir
    private Path folder;

    Address room() {
        return new Address.Folder(folder.resolve("room"));
    }

    Server server() {
        return Server.start(room(), 0).orElseThrow();
    }

    /** Laid on a remnant with flaws: a search comes down to it step by step, and not to the floor. */
    static String remnant(Visitor visitor) throws Exception {
        Map<String, List<String>> form =
                new LinkedHashMap<>(Form.of(Files.readString(Path.of("examples/from-a-remnant.yaml")))
                        .typed());
        form.put("name", List.of("Remnant " + visitor.get("").body().split("/makes/").length));
        return Visitor.at(visitor.post(form));
    }

    interface Visit {
        void at(Visitor visitor, String make) throws Exception;
    }

    void visited(Visit visit) throws Exception {
        Server server = server();
        try {
            Visitor visitor = new Visitor(server);
            visit.at(visitor, visitor.make());
        } finally {
            server.stop();
        }
    }

    static HttpResponse<String> press(Visitor visitor, String make, String... fields) throws Exception {
        return post(visitor, make + "/lay", fields);
    }

    static HttpResponse<String> post(Visitor visitor, String path, String... fields) throws Exception {
        Map<String, List<String>> form = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            form.computeIfAbsent(fields[i], k -> new ArrayList<>()).add(fields[i + 1]);
        }
        return visitor.post(path, form);
    }

    /** What the page carries in the hidden field of that name. */
    static String hidden(String page, String name) {
        String carried = Visitor.found(page, "name=\"" + name + "\" value=\"([^\"]*)\"");
        return carried.replace("&quot;", "\"").replace("&#34;", "\"").replace("&amp;", "&");
    }

    /** Where the pieces lie now. */
    static ObjectNode placed(Visitor visitor, String make) throws Exception {
        HttpResponse<String> page = press(visitor, make, "do", "move", "piece", "leg 1", "dx", "0", "dy", "0");
        assertThat(page.statusCode()).isEqualTo(200);
        return (ObjectNode) JSON.readTree(hidden(page.body(), "placed"));
    }

    /** Every piece far beyond the one before it: it holds, and wants to be shorter. */
    static String spread(ObjectNode placed) {
        ArrayNode spots = (ArrayNode) placed.get("placements");
        for (int i = 0; i < spots.size(); i++) {
            ObjectNode spot = (ObjectNode) spots.get(i);
            spot.put("y", spot.get("y").asDouble() + 1500 * i);
        }
        return placed.toString();
    }

    static double now(String page) {
        return Double.parseDouble(Visitor.found(page, ">now ([0-9.]+) cm<"));
    }

    /** Until so many have come that tell a length, or it is over. */
    static List<String> events(Server server, String make, int most) throws Exception {
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

    static double spot(String placed, String id) {
        for (var s : JSON.readTree(placed).get("placements")) {
            if ((s.get("piece").asString() + " " + s.get("copy").asInt()).equals(id)) {
                return s.get("y").asDouble();
            }
        }
        throw new AssertionError(id);
    }

    static String[] with(String[] fields, String... more) {
        return Stream.concat(Stream.of(fields), Stream.of(more)).toArray(String[]::new);
    }
}
