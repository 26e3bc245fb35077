package stretchwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.StripInstance;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Layout instances as files of a folder (format strip-instance/1). */
public final class Instances {
    private Instances() {}

    /** The names of all in the folder; none where there is no folder. */
    static List<String> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".json"))
                    .map(f -> f.substring(0, f.length() - ".json".length()))
                    .sorted()
                    .toList();
        }
    }

    public static StripInstance read(Path file) throws IOException {
        JsonNode root = JsonMapper.builder().build().readTree(Files.readString(file));
        List<Double> rotations = new ArrayList<>();
        root.get("rotations").forEach(r -> rotations.add(r.asDouble()));
        List<StripInstance.Item> items = new ArrayList<>();
        root.get("items").forEach(i -> {
            List<Point> points = new ArrayList<>();
            i.get("polygon")
                    .forEach(p ->
                            points.add(new Point(p.get(0).asDouble(), p.get(1).asDouble())));
            items.add(new StripInstance.Item(
                    i.get("id").asString(), i.get("demand").asInt(), new Polygon(points)));
        });
        return new StripInstance(
                root.get("name").asString(), root.get("stripHeight").asDouble(), rotations, items);
    }

    static int pieces(StripInstance instance) {
        return instance.items().stream().mapToInt(StripInstance.Item::demand).sum();
    }

    /** The same with its demands multiplied or cut to this many pieces, the mixture kept as far as that goes. */
    static StripInstance of(StripInstance instance, int pieces) {
        double factor = (double) pieces / pieces(instance);
        List<StripInstance.Item> items = instance.items();
        int[] demand = items.stream().mapToInt(i -> (int) (i.demand() * factor)).toArray();
        List<Integer> byRest = IntStream.range(0, demand.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> demand[k] - items.get(k).demand() * factor))
                .toList();
        int missing = pieces - IntStream.of(demand).sum();
        byRest.subList(0, missing).forEach(k -> demand[k]++);
        return new StripInstance(
                instance.name() + " x " + pieces,
                instance.stripHeight(),
                instance.rotations(),
                IntStream.range(0, demand.length)
                        .filter(k -> demand[k] > 0)
                        .mapToObj(k -> new StripInstance.Item(
                                items.get(k).id(), demand[k], items.get(k).polygon()))
                        .toList());
    }
}
