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
import stretchwright.ground.Part;
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

    private static Map<Part, Number> dimensions(Made made) {
        Map<Part, Number> out = new LinkedHashMap<>();
        for (Reason r : made.pattern().reasons()) {
            out.put(r.dimension().said(), new Number(r.value(), r.unit()));
        }
        return out;
    }

    static List<CompareRow> seams(Made a, Made b) {
        return rows(seams(a), seams(b));
    }

    private static Map<Part, Number> seams(Made made) {
        Map<Part, Number> out = new LinkedHashMap<>();
        made.pattern().seams().forEach(s -> out.put(s.name().said(), new Number(s.length(), "mm")));
        return out;
    }

    /** Cloth in all pieces of the name. */
    static List<CompareRow> areas(Made a, Made b) {
        return rows(areas(a), areas(b));
    }

    private static Map<Part, Number> areas(Made made) {
        Map<Part, Number> out = new LinkedHashMap<>();
        for (Piece p : made.pattern().pieces()) {
            out.put(
                    Tell.said("compare.piece-cut", p.name().said(), Part.count(p.cut())),
                    new Number(p.clothArea() * p.cut() / 100, "cm2"));
        }
        return out;
    }

    static List<CompareRow> work(Made a, Made b) {
        return rows(work(a), work(b));
    }

    private static Map<Part, Number> work(Made made) {
        Map<Part, Number> out = new LinkedHashMap<>();
        out.put(Tell.said("compare.buy"), new Number(made.use().buying().bought(), "mm"));
        out.put(Tell.said("compare.lay-needs"), new Number(made.lay().length(), "mm"));
        out.put(Tell.said("compare.cloth-used"), new Number(100 * made.lay().use(), "%"));
        out.put(Tell.said("compare.sewing"), new Number(made.sewing().minutes(), "min"));
        out.put(Tell.said("compare.changes"), new Number(made.sewing().changeovers(), ""));
        made.make()
                .fabric()
                .roll()
                .price()
                .ifPresent(p -> out.put(
                        Tell.said("compare.cost"),
                        new Number(p.perMetre() * made.use().buying().bought() / 1000, "")));
        return out;
    }

    static List<CompareRow> fit(Made a, Made b) {
        return rows(fit(a.fit()), fit(b.fit()));
    }

    private static Map<Part, Number> fit(FitReport fit) {
        Map<Part, Number> out = new LinkedHashMap<>();
        for (FitReport.LevelFit l : fit.levels()) {
            Part place = l.place();
            out.put(Tell.said("compare.width", place), new Number(l.width(), "mm"));
            out.put(Tell.said("compare.stretched", place), new Number(100 * l.across(), "%"));
            out.put(Tell.said("compare.pressure", place), new Number(Laplace.toMmHg(l.pressure()), "mmHg"));
        }
        for (FitReport.Opening o : fit.openings()) {
            out.put(
                    Tell.said("compare.reserve", o.opening().said()),
                    new Number(100 * (o.allowed() - o.needed()), "%"));
        }
        for (FitReport.Pose p : fit.poses()) {
            out.put(
                    Tell.said("compare.reserve", Subject.of(p).about()),
                    new Number(100 * (p.available() - p.needed()), "%"));
        }
        return out;
    }

    private static List<CompareRow> rows(Map<Part, Number> a, Map<Part, Number> b) {
        Set<Part> names = new LinkedHashSet<>(a.keySet());
        names.addAll(b.keySet());
        List<CompareRow> out = new ArrayList<>();
        for (Part name : names) {
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
