package stretchwright.many;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport;
import stretchwright.fit.Subject;
import stretchwright.ground.Voice;
import stretchwright.make.Made;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;

/** Dimensions, widths, seams, areas, cloth, time and fit of two makes, name by name. */
final class CompareNumbers {
    private CompareNumbers() {}

    private record Number(double value, String unit) {}

    static List<CompareRow> dimensions(Made a, Made b) {
        return rows(dimensions(a), dimensions(b));
    }

    private static Map<String, Number> dimensions(Made made) {
        Map<String, Number> out = new LinkedHashMap<>();
        for (Reason r : made.pattern().reasons()) {
            out.put(r.dimension().word(), new Number(r.value(), r.unit()));
        }
        return out;
    }

    static List<CompareRow> seams(Made a, Made b) {
        return rows(seams(a), seams(b));
    }

    private static Map<String, Number> seams(Made made) {
        Map<String, Number> out = new LinkedHashMap<>();
        made.pattern().seams().forEach(s -> out.put(s.name(), new Number(s.length(), "mm")));
        return out;
    }

    /** Cloth in all pieces of the name. */
    static List<CompareRow> areas(Made a, Made b) {
        return rows(areas(a), areas(b));
    }

    private static Map<String, Number> areas(Made made) {
        Map<String, Number> out = new LinkedHashMap<>();
        for (Piece p : made.pattern().pieces()) {
            out.put(p.name() + " (" + p.cut() + " cut)", new Number(p.clothArea() * p.cut() / 100, "cm2"));
        }
        return out;
    }

    static List<CompareRow> work(Made a, Made b) {
        return rows(work(a), work(b));
    }

    private static Map<String, Number> work(Made made) {
        Map<String, Number> out = new LinkedHashMap<>();
        out.put("fabric to buy", new Number(made.use().buying().bought(), "mm"));
        out.put("the lay needs", new Number(made.lay().length(), "mm"));
        out.put("cloth used", new Number(100 * made.lay().use(), "%"));
        out.put("sewing", new Number(made.sewing().minutes(), "min"));
        out.put("changes of machine", new Number(made.sewing().changeovers(), ""));
        made.make()
                .fabric()
                .roll().price()
                .ifPresent(p -> out.put(
                        "cost of the fabric",
                        new Number(p.perMetre() * made.use().buying().bought() / 1000, "")));
        return out;
    }

    static List<CompareRow> fit(Made a, Made b) {
        return rows(fit(a.fit()), fit(b.fit()));
    }

    private static Map<String, Number> fit(FitReport fit) {
        Voice voice = Voice.plain();
        Map<String, Number> out = new LinkedHashMap<>();
        for (FitReport.LevelFit l : fit.levels()) {
            String place = voice.say(l.place());
            out.put(place + ": flat width", new Number(l.width(), "mm"));
            out.put(place + ": stretched standing", new Number(100 * l.across(), "%"));
            out.put(place + ": pressure", new Number(Laplace.toMmHg(l.pressure()), "mmHg"));
        }
        for (FitReport.Opening o : fit.openings()) {
            out.put(voice.say(o.opening().said()) + ": in reserve", new Number(100 * (o.allowed() - o.needed()), "%"));
        }
        for (FitReport.Pose p : fit.poses()) {
            out.put(
                    voice.say(Subject.of(p).about()) + ": in reserve",
                    new Number(100 * (p.available() - p.needed()), "%"));
        }
        return out;
    }

    private static List<CompareRow> rows(Map<String, Number> a, Map<String, Number> b) {
        Set<String> names = new LinkedHashSet<>(a.keySet());
        names.addAll(b.keySet());
        List<CompareRow> out = new ArrayList<>();
        for (String name : names) {
            Number one = a.get(name);
            Number other = b.get(name);
            String unit = one != null ? one.unit : other != null ? other.unit : "";
            CompareRow row = CompareRow.of(name, value(one), value(other), unit);
            if (row.differs()) {
                out.add(row);
            }
        }
        return out;
    }

    private static OptionalDouble value(@org.jspecify.annotations.Nullable Number n) {
        return n == null ? OptionalDouble.empty() : OptionalDouble.of(n.value);
    }
}
