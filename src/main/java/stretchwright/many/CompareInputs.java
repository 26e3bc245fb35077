package stretchwright.many;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.PoseLength;
import stretchwright.fabric.Laplace;
import stretchwright.make.Made;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Parts;
import stretchwright.report.Report;
import stretchwright.report.ReportInputs;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What was put in and differs: figure, age, measures, whatever the report repeats of fabric, boot and style, machines. */
final class CompareInputs {
    private static final Set<String> SHARES = Set.of(
            "stretchAcross",
            "stretchAlong",
            "wrapped",
            "recovery",
            "shrinkageAcross",
            "shrinkageAlong",
            "showsThroughAt");

    private final Map<String, CompareRow> rows = new LinkedHashMap<>();

    private CompareInputs() {}

    static List<CompareRow> of(Made a, Made b) {
        CompareInputs inputs = new CompareInputs();
        inputs.add(CompareRow.words(
                "figure", a.body().figure().word(), b.body().figure().word()));
        inputs.add(CompareRow.of("age", a.body().age(), b.body().age(), "years"));
        for (Measure m : Measure.values()) {
            inputs.add(CompareRow.of(
                    m.term() + origin(m, a.body(), b.body()),
                    OptionalDouble.of(a.body().mm(m)),
                    OptionalDouble.of(b.body().mm(m)),
                    "mm"));
        }
        inputs.section("fabric", fabric(a), fabric(b));
        inputs.section("boot", boot(a), boot(b));
        inputs.section("style", style(a), style(b));
        inputs.pockets(a, b);
        inputs.holds(a, b);
        inputs.eases(a, b);
        inputs.poses(a, b);
        inputs.add(CompareRow.words(
                "seated",
                yes(a.make().measured().seated()),
                yes(b.make().measured().seated())));
        inputs.add(CompareRow.words("machines", machines(a), machines(b)));
        return inputs.rows.values().stream().filter(CompareRow::differs).toList();
    }

    private void add(CompareRow row) {
        rows.put(row.what(), row);
    }

    /** Own pressures, level by level. */
    private void holds(Made a, Made b) {
        for (Level.Name level : Level.Name.values()) {
            add(CompareRow.of("style hold at " + level.word(), hold(a, level), hold(b, level), "mmHg"));
        }
    }

    private static OptionalDouble hold(Made made, Level.Name level) {
        return made.make().style().hold() instanceof Hold.Profile own
                        && own.kilopascals().containsKey(level)
                ? OptionalDouble.of(Laplace.toMmHg(own.kilopascals().getOrDefault(level, 0.0)))
                : OptionalDouble.empty();
    }

    /** Width that the maker adds, level by level. */
    private void eases(Made a, Made b) {
        for (Level.Name level : Level.Name.values()) {
            add(CompareRow.of("style ease at " + level.word(), ease(a, level), ease(b, level), "mm"));
        }
    }

    private static OptionalDouble ease(Made made, Level.Name level) {
        Double mm = made.make().style().ease().get(level);
        return mm == null ? OptionalDouble.empty() : OptionalDouble.of(mm);
    }

    /** Pockets of the same kind, size by size; the list of kinds stands with the style. */
    private void pockets(Made a, Made b) {
        for (Parts.Pocket.Kind kind : Parts.Pocket.Kind.values()) {
            String what = "style " + kind.word() + " pocket ";
            add(CompareRow.of(
                    what + "width", pocket(a, kind, Parts.Pocket::width), pocket(b, kind, Parts.Pocket::width), "mm"));
            add(CompareRow.of(
                    what + "height",
                    pocket(a, kind, Parts.Pocket::height),
                    pocket(b, kind, Parts.Pocket::height),
                    "mm"));
            add(CompareRow.of(
                    what + "thickness",
                    pocket(a, kind, Parts.Pocket::thickness),
                    pocket(b, kind, Parts.Pocket::thickness),
                    "mm"));
        }
    }

    private static OptionalDouble pocket(Made made, Parts.Pocket.Kind kind, ToDoubleFunction<Parts.Pocket> mm) {
        return made.make().style().parts().pockets().stream()
                .filter(p -> p.kind() == kind)
                .mapToDouble(mm)
                .findFirst();
    }

    private void poses(Made a, Made b) {
        for (PoseLength.Course course : PoseLength.Course.values()) {
            add(CompareRow.of(
                    course.word() + ", standing",
                    pose(a, course, PoseLength::standing),
                    pose(b, course, PoseLength::standing),
                    "mm"));
            add(CompareRow.of(
                    course.word() + ", in the pose",
                    pose(a, course, PoseLength::inPose),
                    pose(b, course, PoseLength::inPose),
                    "mm"));
        }
    }

    private static OptionalDouble pose(Made made, PoseLength.Course course, ToDoubleFunction<PoseLength> mm) {
        return made.make().measured().poseLengths().stream()
                .filter(l -> l.course() == course)
                .mapToDouble(mm)
                .findFirst();
    }

    private static String yes(boolean is) {
        return is ? "yes" : "no";
    }

    private static String origin(Measure m, Body a, Body b) {
        if (a.isGiven(m) && b.isGiven(m)) {
            return "";
        }
        return a.isGiven(m) ? " (B estimated)" : b.isGiven(m) ? " (A estimated)" : " (estimated)";
    }

    private static ObjectNode fabric(Made made) {
        ObjectNode out = Report.node();
        ReportInputs.fabric(out, made.make().fabric());
        return out;
    }

    private static ObjectNode boot(Made made) {
        ObjectNode out = Report.node();
        made.make().boot().ifPresent(b -> ReportInputs.boot(out, b));
        return out;
    }

    private static ObjectNode style(Made made) {
        ObjectNode out = Report.node();
        ReportInputs.style(out, made.make().style());
        return out;
    }

    private static String machines(Made made) {
        List<String> words = new ArrayList<>();
        made.make().machines().forEach(m -> words.add(m.word()));
        return String.join(", ", words);
    }

    private void section(String path, JsonNode a, JsonNode b) {
        Set<String> keys = new TreeSet<>(a.propertyNames());
        keys.addAll(b.propertyNames());
        for (String key : keys) {
            JsonNode one = a.path(key);
            JsonNode other = b.path(key);
            String what = path + " " + words(key);
            if (one.isObject() || other.isObject()) {
                section(what, one.isObject() ? one : Report.node(), other.isObject() ? other : Report.node());
            } else if (one.isNumber() || other.isNumber()) {
                add(CompareRow.of(what, number(key, one), number(key, other), unit(key)));
            } else {
                add(CompareRow.words(what, text(one), text(other)));
            }
        }
    }

    private static OptionalDouble number(String key, JsonNode node) {
        double factor = SHARES.contains(key) ? 100 : 1;
        return node.isNumber() ? OptionalDouble.of(factor * node.asDouble()) : OptionalDouble.empty();
    }

    private static String unit(String key) {
        return SHARES.contains(key) ? "%" : key.equals("weight") ? "g/m2" : "mm";
    }

    private static String text(JsonNode node) {
        if (node.isMissingNode()) {
            return "-";
        }
        return node.isArray()
                ? readings(node)
                : node.isBoolean() ? (node.asBoolean() ? "yes" : "no") : node.asString("");
    }

    /** Readings of a load curve, as stretch and tension; any other list as it stands. */
    private static String readings(JsonNode list) {
        List<String> all = new ArrayList<>();
        for (JsonNode item : list) {
            all.add(
                    item.isArray() && item.size() == 2
                            ? String.format(
                                    Locale.ROOT,
                                    "%.0f%%:%.0f",
                                    100 * item.get(0).asDouble(),
                                    item.get(1).asDouble())
                            : item.isObject() ? item.path("kind").asString("") : item.asString(""));
        }
        return all.isEmpty() ? "-" : String.join(" ", all);
    }

    private static String words(String key) {
        return key.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
