package stretchwright.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.StripInstance;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a plain layout instance (format strip-instance/1); everything that is wrong becomes a finding. */
final class StripFile {
    static final int LARGEST = 16 * 1024 * 1024;
    private static final String FORMAT = "strip-instance/1";
    /** Beyond these the reader rather asks than runs out of memory. */
    private static final int MOST_PIECES = 100_000;

    private static final int MOST_CORNERS = 10_000;
    /** Every tenth of a degree. */
    private static final int MOST_ROTATIONS = 3600;

    private static final double LARGEST_NUMBER = 1e9;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final Findings findings;
    private long pieces;

    private StripFile(Findings findings) {
        this.findings = findings;
    }

    /** The instance, or empty and at least one finding. */
    static Optional<StripInstance> read(byte[] bytes, Findings findings) {
        try {
            JsonNode root = JSON.readTree(bytes);
            return root == null || root.isMissingNode()
                    ? none(findings, "", "the file is empty.", "")
                    : new StripFile(findings).instance(root);
        } catch (JacksonException e) {
            String where =
                    e.getLocation() == null ? "" : "line " + e.getLocation().getLineNr() + ": ";
            return none(findings, "", where + "this is not JSON: " + e.getOriginalMessage() + ".", "");
        }
    }

    private static Optional<StripInstance> none(Findings findings, String key, String problem, String remedy) {
        findings.add(key, problem, remedy);
        return Optional.empty();
    }

    private Optional<StripInstance> instance(JsonNode root) {
        if (!root.isObject() || !root.path("format").asString("").equals(FORMAT)) {
            return none(findings, "format", "this is not a layout instance.", "Write \"format\": \"" + FORMAT + "\".");
        }
        String name = root.path("name").asString("");
        if (name.isEmpty()) {
            findings.add("name", "is missing.", "Give the instance a name.");
        }
        JsonNode height = root.path("stripHeight");
        if (!usable(height) || height.doubleValue() <= 0) {
            findings.add("stripHeight", "is not a positive number.", "Give the fixed size of the strip.");
        }
        List<Double> rotations = rotations(root.path("rotations"));
        List<StripInstance.Item> items = items(root.path("items"));
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new StripInstance(name, height.doubleValue(), rotations, items));
    }

    private static boolean usable(JsonNode node) {
        return node.isNumber() && Double.isFinite(node.doubleValue()) && Math.abs(node.doubleValue()) <= LARGEST_NUMBER;
    }

    private List<Double> rotations(JsonNode list) {
        Set<Double> rotations = new LinkedHashSet<>();
        if (!list.isArray() || list.isEmpty()) {
            findings.add("rotations", "is not a list of angles.", "Write [0] where none is allowed.");
        } else if (list.size() > MOST_ROTATIONS) {
            findings.add(
                    "rotations",
                    "lists " + list.size() + " angles; at most " + MOST_ROTATIONS + " are tried.",
                    "Leave out those that hardly differ.");
        } else {
            list.forEach(angle -> rotation(angle).ifPresent(rotations::add));
        }
        return List.copyOf(rotations);
    }

    private OptionalDouble rotation(JsonNode angle) {
        if (!usable(angle)) {
            findings.add("rotations", angle + " is not a number of degrees.", "Write for example [0, 180].");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(angle.doubleValue());
    }

    private List<StripInstance.Item> items(JsonNode list) {
        if (!list.isArray() || list.isEmpty()) {
            findings.add("items", "is not a list of items.", "Each has an id, a demand and a polygon.");
        }
        Set<String> ids = new HashSet<>();
        List<StripInstance.Item> items = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String key = "items[" + (i + 1) + "]";
            JsonNode item = list.get(i);
            String id = item.path("id").asString("");
            if (id.isEmpty() || !ids.add(id)) {
                findings.add(key + ".id", id.isEmpty() ? "is missing." : "\"" + id + "\" stands twice.", "");
            }
            Optional<Integer> demand = demand(item.path("demand"), key);
            Optional<Polygon> polygon = polygon(item.path("polygon"), key + ".polygon");
            if (!id.isEmpty() && demand.isPresent() && polygon.isPresent()) {
                items.add(new StripInstance.Item(id, demand.get(), polygon.get()));
            }
        }
        return items;
    }

    private Optional<Integer> demand(JsonNode node, String key) {
        if (!node.isIntegralNumber() || !node.canConvertToInt() || node.intValue() < 1) {
            findings.add(key + ".demand", "is not a whole number of copies.", "Write 1 or more.");
            return Optional.empty();
        }
        pieces += node.intValue();
        if (pieces > MOST_PIECES) {
            findings.add(key + ".demand", "brings the sum above " + MOST_PIECES + " pieces.", "");
            pieces = 0;
            return Optional.empty();
        }
        return Optional.of(node.intValue());
    }

    private Optional<Polygon> polygon(JsonNode list, String key) {
        List<Point> points = new ArrayList<>();
        for (JsonNode corner : list) {
            if (!corner.isArray() || corner.size() != 2 || !usable(corner.get(0)) || !usable(corner.get(1))) {
                findings.add(key, "corner " + (points.size() + 1) + " is not a pair [x, y].", "");
                return Optional.empty();
            }
            points.add(new Point(corner.get(0).doubleValue(), corner.get(1).doubleValue()));
        }
        if (!list.isArray() || points.size() < 3 || points.size() > MOST_CORNERS) {
            findings.add(key, "has " + points.size() + " corners.", "3 to " + MOST_CORNERS + " are allowed.");
            return Optional.empty();
        }
        if (!simple(points)) {
            findings.add(key, "touches or crosses itself.", "An item is one simple outline.");
            return Optional.empty();
        }
        if (!(Polygon.signedArea(points) > 0)) {
            findings.add(key, "runs clockwise.", "List the corners counter-clockwise, y upwards.");
            return Optional.empty();
        }
        return Optional.of(new Polygon(points));
    }

    private static boolean simple(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i <= points.size(); i++) {
            Point p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return new GeometryFactory().createPolygon(ring).isValid();
    }
}
