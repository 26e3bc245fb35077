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
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Said;
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
                    ? none(findings, "", Tell.said("strip.empty"), Said.NOTHING)
                    : new StripFile(findings).instance(root);
        } catch (JacksonException e) {
            Part why = Part.text(e.getOriginalMessage());
            Said wrong = e.getLocation() == null
                    ? Tell.said("strip.not-json", why)
                    : Tell.said(
                            "strip.not-json-line", Part.count(e.getLocation().getLineNr()), why);
            return none(findings, "", wrong, Said.NOTHING);
        }
    }

    private static Optional<StripInstance> none(Findings findings, String key, Said problem, Said remedy) {
        findings.add(key, problem, remedy);
        return Optional.empty();
    }

    private Optional<StripInstance> instance(JsonNode root) {
        if (!root.isObject() || !root.path("format").asString("").equals(FORMAT)) {
            return none(
                    findings,
                    "format",
                    Tell.said("strip.not-instance"),
                    Tell.said("strip.write-format", Part.text(FORMAT)));
        }
        String name = root.path("name").asString("");
        if (name.isEmpty()) {
            findings.add("name", Tell.said("strip.missing"), Tell.said("strip.name"));
        }
        JsonNode height = root.path("stripHeight");
        if (!usable(height) || height.doubleValue() <= 0) {
            findings.add("stripHeight", Tell.said("strip.height"), Tell.said("strip.height-help"));
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
            findings.add("rotations", Tell.said("strip.rotations"), Tell.said("strip.rotations-help"));
        } else if (list.size() > MOST_ROTATIONS) {
            findings.add(
                    "rotations",
                    Tell.said("strip.angles", Part.count(list.size()), Part.count(MOST_ROTATIONS)),
                    Tell.said("strip.angles-help"));
        } else {
            list.forEach(angle -> rotation(angle).ifPresent(rotations::add));
        }
        return List.copyOf(rotations);
    }

    private OptionalDouble rotation(JsonNode angle) {
        if (!usable(angle)) {
            findings.add(
                    "rotations", Tell.said("strip.angle", Part.text(angle.toString())), Tell.said("strip.angle-help"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(angle.doubleValue());
    }

    private List<StripInstance.Item> items(JsonNode list) {
        if (!list.isArray() || list.isEmpty()) {
            findings.add("items", Tell.said("strip.items"), Tell.said("strip.items-help"));
        }
        Set<String> ids = new HashSet<>();
        List<StripInstance.Item> items = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String key = "items[" + (i + 1) + "]";
            JsonNode item = list.get(i);
            String id = item.path("id").asString("");
            if (id.isEmpty() || !ids.add(id)) {
                findings.add(
                        key + ".id",
                        id.isEmpty() ? Tell.said("strip.missing") : Tell.said("strip.twice", Tell.quoted(id)),
                        Said.NOTHING);
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
            findings.add(key + ".demand", Tell.said("strip.demand"), Tell.said("strip.demand-help"));
            return Optional.empty();
        }
        pieces += node.intValue();
        if (pieces > MOST_PIECES) {
            findings.add(key + ".demand", Tell.said("strip.pieces", Part.count(MOST_PIECES)), Said.NOTHING);
            pieces = 0;
            return Optional.empty();
        }
        return Optional.of(node.intValue());
    }

    private Optional<Polygon> polygon(JsonNode list, String key) {
        List<Point> points = new ArrayList<>();
        for (JsonNode corner : list) {
            if (!corner.isArray() || corner.size() != 2 || !usable(corner.get(0)) || !usable(corner.get(1))) {
                findings.add(key, Tell.said("strip.corner", Part.count(points.size() + 1)), Said.NOTHING);
                return Optional.empty();
            }
            points.add(new Point(corner.get(0).doubleValue(), corner.get(1).doubleValue()));
        }
        if (!list.isArray() || points.size() < 3 || points.size() > MOST_CORNERS) {
            findings.add(
                    key,
                    Tell.said("strip.corners", Part.count(points.size())),
                    Tell.said("strip.corners-help", Part.count(MOST_CORNERS)));
            return Optional.empty();
        }
        if (!simple(points)) {
            findings.add(key, Tell.said("strip.crosses"), Tell.said("strip.crosses-help"));
            return Optional.empty();
        }
        if (!(Polygon.signedArea(points) > 0)) {
            findings.add(key, Tell.said("strip.clockwise"), Tell.said("strip.clockwise-help"));
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
