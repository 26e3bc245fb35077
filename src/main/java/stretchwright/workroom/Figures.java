package stretchwright.workroom;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stretchwright.ground.Document;
import stretchwright.make.Made;
import stretchwright.report.Report;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is kept of what a make became: the report's numbers without its outlines and steps, and of each file that was written its
 * sum (SHA-256). The files themselves are made again when they are asked for; the sums tell whether they are the same.
 */
public final class Figures {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** What is long and follows from the rest. */
    private static final Map<String, List<String>> LEFT_OUT = Map.of(
            "pattern", List.of("pieces", "reasons"),
            "fit", List.of("course", "seams", "slips", "covers", "asides"),
            "lay", List.of("placements", "guide", "offcuts", "ways"),
            "sewing", List.of("operations", "threads", "optimum", "firstPair"));

    private Figures() {}

    public static String of(Made made) {
        ObjectNode report = (ObjectNode) JSON.readTree(made.report().bytes());
        ObjectNode sizes = JSON.createObjectNode();
        report.at("/pattern/reasons").forEach(r -> sizes.set(r.path("dimension").asString(), r.path("value")));
        LEFT_OUT.forEach((section, names) -> {
            if (report.get(section) instanceof ObjectNode inside) {
                names.forEach(inside::remove);
            }
        });
        report.set("sizes", sizes);
        report.remove("files");
        ObjectNode files = report.putObject("files");
        sums(made.documents()).forEach(files::put);
        return JSON.writeValueAsString(report);
    }

    /** Of each file its sum, but for the report: it lists whatever other files were asked for. */
    static Map<String, String> sums(List<Document> documents) {
        Map<String, String> out = new TreeMap<>();
        documents.stream().filter(d -> !d.name().equals(Report.NAME)).forEach(d -> out.put(d.name(), sum(d.bytes())));
        return out;
    }

    /** As they were kept. */
    public static JsonNode node(String figures) {
        return JSON.readTree(figures);
    }

    /** Names of the files that are other ones than those of which the figures were kept. */
    public static List<String> others(String figures, Made made) {
        JsonNode kept = JSON.readTree(figures).path("files");
        return sums(made.documents()).entrySet().stream()
                .filter(e -> kept.has(e.getKey())
                        && !kept.path(e.getKey()).asString().equals(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    static String sum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    static String sum(String text) {
        return sum(text.getBytes(StandardCharsets.UTF_8));
    }
}
