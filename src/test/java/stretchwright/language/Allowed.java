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
import stretchwright.body.Measure;
import stretchwright.intake.Key;
import stretchwright.intake.Schema;
import stretchwright.intake.Table;
import stretchwright.intake.WearingSymptom;
import stretchwright.pattern.Machine;
import stretchwright.sewing.StepKind;
import tools.jackson.databind.JsonNode;

/** What may stand without marks: what the maker wrote, words of the make file, and names that are the same in every language. */
final class Allowed {
    /** Words of no language, or of the program's name. */
    private static final Map<String, List<String>> ALWAYS = Map.of(
            "yes and no in the make file",
            List.of("true", "false"),
            "the program's name and version",
            List.of("stretchwright"),
            "names of papers",
            List.of("Letter", "Tabloid"));

    /** What rooms still write in English; goes when the last of them has moved. */
    private static final Map<String, List<String>> NOT_YET = Map.of();

    private static final Pattern WRITTEN =
            Pattern.compile("(?m)\\b(?:name|instruction|note|thread|needle|kind): *([^#\\n,}\\]]+)");

    private Allowed() {}

    static List<String> of() throws IOException {
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
            key.parts().all().forEach(part -> out.add(part.name()));
        }
        out.addAll(WearingSymptom.names());
        Arrays.stream(StepKind.values()).map(StepKind::word).forEach(out::add);
        Arrays.stream(Machine.values()).map(Machine::word).forEach(out::add);
        Arrays.stream(Measure.values()).map(Measure::term).forEach(out::add);
        choices(Schema.of(Table.keys()), out);
        return out;
    }

    /** Every word that the make file offers to choose among. */
    private static void choices(JsonNode schema, List<String> out) {
        schema.path("enum").forEach(one -> out.add(one.asString()));
        schema.forEach(part -> choices(part, out));
    }
}
