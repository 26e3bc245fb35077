package stretchwright.workroom.jobs;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stretchwright.ground.Document;
import stretchwright.ground.Json;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Where the pieces of a make's lay were put, as text, and back: numbers as they are, for a rounded piece could overlap its neighbour. */
public final class PlacedText {
    static final String NAME = "lay.json";
    private static final JsonMapper READER = JsonMapper.builder().build();

    private PlacedText() {}

    public static String text(Placed placed) {
        ObjectNode out = Json.node();
        put(out, placed);
        return Json.text(out);
    }

    static void put(ObjectNode out, Placed placed) {
        out.put("method", placed.method().word());
        out.put("doubled", placed.doubled());
        out.put("byHand", placed.byHand());
        ArrayNode spots = out.putArray("placements");
        for (Placed.Spot s : placed.spots()) {
            spots.addObject()
                    .put("piece", s.piece())
                    .put("copy", s.copy())
                    .put("x", s.x())
                    .put("y", s.y())
                    .put("rotation", s.rotation())
                    .put("mirrored", s.mirrored())
                    .put("unfolded", s.unfolded())
                    .put("layers", s.layers());
        }
    }

    /** Its length besides: what was found is told without laying the pieces anew. */
    static Document document(double length, Placed placed) {
        ObjectNode out = Json.node();
        out.put("length", length);
        put(out, placed);
        return new Document(NAME, "lay", 1, Json.bytes(out));
    }

    /**
     * Of a text that this program wrote.
     *
     * @throws IllegalArgumentException where it is none
     */
    public static Placed read(String text) {
        try {
            return read(READER.readTree(text));
        } catch (JacksonException e) {
            throw new IllegalArgumentException(e);
        }
    }

    static Placed read(Document document) {
        return read(new String(document.bytes(), StandardCharsets.UTF_8));
    }

    /** Of what a search has found, mm. */
    static double length(Document document) {
        return READER.readTree(new String(document.bytes(), StandardCharsets.UTF_8))
                .required("length")
                .asDouble();
    }

    static Placed read(JsonNode root) {
        String word = root.required("method").asString();
        Lay.Method method = Arrays.stream(Lay.Method.values())
                .filter(m -> m.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(word));
        List<Placed.Spot> spots = new ArrayList<>();
        root.required("placements")
                .forEach(p -> spots.add(new Placed.Spot(
                        p.required("piece").asString(),
                        p.required("copy").asInt(),
                        p.required("x").asDouble(),
                        p.required("y").asDouble(),
                        p.required("rotation").asDouble(),
                        p.required("mirrored").asBoolean(),
                        p.required("unfolded").asBoolean(),
                        p.required("layers").asInt())));
        return new Placed(
                method,
                root.required("doubled").asDouble(),
                spots,
                root.required("byHand").asBoolean());
    }
}
