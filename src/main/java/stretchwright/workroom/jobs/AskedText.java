package stretchwright.workroom.jobs;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import stretchwright.ground.BadInput;
import stretchwright.ground.Json;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.StripInstance;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What was asked as it stands in the database, and back: JSON, files in it byte by byte, an instance as its own format has it. */
final class AskedText {
    private static final JsonMapper READER = JsonMapper.builder().build();

    private AskedText() {}

    static String text(Asked asked) {
        ObjectNode out = Json.node();
        if (asked instanceof Asked.Lay lay) {
            search(out, lay.seed(), lay.effort());
            write(out.putObject("instance"), lay.instance());
        } else if (asked instanceof Asked.Pieces pieces) {
            search(out, pieces.seed(), pieces.effort());
            write(out.putObject("make"), pieces.make());
            out.put("cloth", pieces.cloth());
            PlacedText.put(out.putObject("from"), pieces.from());
            ArrayNode pinned = out.putArray("pinned");
            pieces.pinned().stream().sorted().forEach(pinned::add);
        } else if (asked instanceof Asked.Club club) {
            search(out, club.seed(), club.effort());
            club.table().ifPresent(mm -> out.put("table", mm));
            ArrayNode makes = out.putArray("makes");
            club.makes().forEach(m -> write(makes.addObject(), m));
        } else if (asked instanceof Asked.Sizes sizes) {
            write(out.putObject("make"), sizes.make());
            write(out.putObject("bodies"), sizes.bodies());
            sizes.unit().ifPresent(u -> out.put("unit", u));
        }
        return Json.text(out);
    }

    private static void search(ObjectNode out, long seed, Effort effort) {
        out.put("seed", seed);
        out.putArray("rounds").add(effort.explore()).add(effort.compress());
    }

    private static void write(ObjectNode out, Asked.File file) {
        out.put("file", file.name());
        out.put("bytes", Base64.getEncoder().encodeToString(file.bytes()));
    }

    private static void write(ObjectNode out, StripInstance instance) {
        out.put("format", "strip-instance/1");
        out.put("name", instance.name());
        out.put("stripHeight", instance.stripHeight());
        ArrayNode rotations = out.putArray("rotations");
        instance.rotations().forEach(rotations::add);
        ArrayNode items = out.putArray("items");
        for (StripInstance.Item item : instance.items()) {
            ObjectNode one = items.addObject().put("id", item.id()).put("demand", item.demand());
            ArrayNode polygon = one.putArray("polygon");
            item.polygon().points().forEach(p -> polygon.addArray().add(p.x()).add(p.y()));
        }
    }

    static Asked read(Job job) {
        try {
            JsonNode root = READER.readTree(job.input());
            return switch (job.kind()) {
                case LAY -> new Asked.Lay(instance(root.required("instance")), seed(root), effort(root));
                case PIECES -> pieces(root);
                case CLUB -> new Asked.Club(files(root.required("makes")), table(root), seed(root), effort(root));
                case SIZES ->
                    new Asked.Sizes(
                            file(root.required("make")),
                            file(root.required("bodies")),
                            Optional.ofNullable(root.get("unit")).map(JsonNode::asString));
            };
        } catch (BadInput e) {
            throw e;
        } catch (JacksonException | IllegalArgumentException e) {
            throw Tell.wrong(
                    job.name(),
                    "",
                    Tell.said("job.unreadable", Part.text(String.valueOf(e.getMessage()))),
                    Tell.said("job.again"));
        }
    }

    private static Asked pieces(JsonNode root) {
        Set<String> pinned = new TreeSet<>();
        root.required("pinned").forEach(p -> pinned.add(p.asString()));
        return new Asked.Pieces(
                file(root.required("make")),
                root.required("cloth").asInt(),
                PlacedText.read(root.required("from")),
                pinned,
                seed(root),
                effort(root));
    }

    private static long seed(JsonNode root) {
        return root.required("seed").asLong();
    }

    private static Effort effort(JsonNode root) {
        JsonNode rounds = root.required("rounds");
        return new Effort(rounds.required(0).asInt(), rounds.required(1).asInt());
    }

    private static OptionalDouble table(JsonNode root) {
        return root.has("table") ? OptionalDouble.of(root.get("table").asDouble()) : OptionalDouble.empty();
    }

    private static List<Asked.File> files(JsonNode list) {
        List<Asked.File> files = new ArrayList<>();
        list.forEach(f -> files.add(file(f)));
        return files;
    }

    private static Asked.File file(JsonNode node) {
        return new Asked.File(
                node.required("file").asString(),
                Base64.getDecoder().decode(node.required("bytes").asString()));
    }

    private static StripInstance instance(JsonNode node) {
        List<Double> rotations = new ArrayList<>();
        node.required("rotations").forEach(r -> rotations.add(r.asDouble()));
        List<StripInstance.Item> items = new ArrayList<>();
        node.required("items").forEach(i -> items.add(item(i)));
        return new StripInstance(
                node.required("name").asString(), node.required("stripHeight").asDouble(), rotations, items);
    }

    private static StripInstance.Item item(JsonNode node) {
        List<Point> points = new ArrayList<>();
        node.required("polygon")
                .forEach(p -> points.add(
                        new Point(p.required(0).asDouble(), p.required(1).asDouble())));
        return new StripInstance.Item(
                node.required("id").asString(), node.required("demand").asInt(), new Polygon(points));
    }
}
