package stretchwright.workroom.jobs;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Document;
import stretchwright.ground.Json;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripResult;
import stretchwright.report.Placements;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** lay.json of a job, and back, number by number as it was; as the command's but for the seconds, for here no clock was asked. */
public final class LaidText {
    static final String NAME = "lay.json";
    private static final JsonMapper READER = JsonMapper.builder().build();

    private LaidText() {}

    static Document document(StripInstance instance, long seed, StripResult result) {
        ObjectNode out = Json.node();
        out.put("instance", instance.name());
        out.put("seed", seed);
        out.put("width", instance.stripHeight());
        out.put("length", result.length());
        out.put("density", result.density());
        Placements.put(out, result);
        ArrayNode steps = out.putArray("history");
        result.history().forEach(s -> steps.addArray().add(s.round()).add(s.length()));
        return new Document(NAME, "lay", 1, Json.bytes(out));
    }

    /** Of a file that this program wrote. */
    public static StripResult read(Document document) {
        JsonNode root = READER.readTree(new String(document.bytes(), StandardCharsets.UTF_8));
        List<StripResult.Placement> placements = new ArrayList<>();
        root.required("placements")
                .forEach(p -> placements.add(new StripResult.Placement(
                        p.required("item").asString(),
                        p.required("x").asDouble(),
                        p.required("y").asDouble(),
                        p.required("rotation").asDouble())));
        List<StripResult.Step> history = new ArrayList<>();
        root.required("history")
                .forEach(s -> history.add(new StripResult.Step(
                        s.required(0).asInt(), s.required(1).asDouble())));
        JsonNode rounds = root.required("rounds");
        return new StripResult(
                placements,
                root.required("length").asDouble(),
                root.required("density").asDouble(),
                new Effort(rounds.required(0).asInt(), rounds.required(1).asInt()),
                history);
    }
}
