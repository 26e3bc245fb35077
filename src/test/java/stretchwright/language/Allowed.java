package stretchwright.language;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stretchwright.body.Measure;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.intake.WearingSymptom;
import stretchwright.pattern.Machine;
import stretchwright.sewing.StepKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What may stand without marks: what the maker wrote, words of the make file, and names that are the same in every language. */
final class Allowed {
    /** Words of no language, or of the program's name. */
    private static final Map<String, List<String>> ALWAYS = Map.of(
            "the program's name and version", List.of("stretchwright"),
            "names of papers", List.of("Letter", "Tabloid"));

    /** What rooms still write in English; goes when the last of them has moved. */
    private static final Map<String, List<String>> NOT_YET = Map.of();

    private static final Pattern WRITTEN =
            Pattern.compile("(?m)\\b(?:name|instruction|note|thread|needle|kind): *([^#\\n,}\\]]+)");

    private Allowed() {}

    static List<String> of(Path doors) throws IOException {
        List<String> out = new ArrayList<>();
        ALWAYS.values().forEach(out::addAll);
        NOT_YET.values().forEach(out::addAll);
        for (String example : PseudoDoors.examples()) {
            Matcher m = WRITTEN.matcher(Files.readString(Path.of(example)));
            while (m.find()) {
                out.add(m.group(1).strip().replaceAll("^\"|\"$", ""));
            }
        }
        for (Key<?> key : Table.keys().all()) {
            out.add(key.name());
            out.addAll(Arrays.asList(key.path().split("\\.")));
        }
        out.addAll(WearingSymptom.names());
        Arrays.stream(StepKind.values()).map(StepKind::word).forEach(out::add);
        Arrays.stream(Machine.values()).map(Machine::word).forEach(out::add);
        Arrays.stream(Measure.values()).map(Measure::term).forEach(out::add);
        try (Stream<Path> reports = Files.walk(doors)) {
            for (Path report : reports.filter(p -> p.endsWith("report.json")).toList()) {
                named(
                        JsonMapper.builder()
                                .build()
                                .readTree(Files.readAllBytes(report))
                                .path("pattern"),
                        out);
            }
        }
        return out;
    }

    /** Pieces, edges, seams, notches and marks as the pattern names them. */
    private static void named(JsonNode pattern, List<String> out) {
        for (JsonNode piece : pattern.path("pieces")) {
            out.add(piece.path("name").asString());
            for (String part : List.of("edges", "notches", "marks")) {
                piece.path(part).forEach(one -> out.add(one.path("name").asString()));
            }
        }
        pattern.path("seams").forEach(seam -> out.add(seam.path("name").asString()));
        pattern.path("notions").forEach(notion -> out.add(notion.path("name").asString()));
    }
}
