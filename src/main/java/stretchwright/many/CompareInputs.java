package stretchwright.many;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.Answers;
import stretchwright.intake.FileKeys;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Table;
import stretchwright.intake.WearerKeys;
import stretchwright.make.Made;

/** What was put in and differs: every measure, and every key of the table that is not only a name. */
public final class CompareInputs {
    private static final Set<String> NAMES =
            Set.of(FileKeys.NAME.path(), FileKeys.UNIT.path(), WearerKeys.NAME.path(), "after wearing");

    private final MakeFile a;
    private final MakeFile b;
    private final Map<Part, CompareRow> rows = new LinkedHashMap<>();

    private CompareInputs(MakeFile a, MakeFile b) {
        this.a = a;
        this.b = b;
    }

    static List<CompareRow> of(Made a, Made b) {
        CompareInputs inputs = new CompareInputs(a.make(), b.make());
        inputs.add(WearerKeys.FIGURE);
        inputs.add(WearerKeys.AGE);
        for (Measure m : Measure.values()) {
            inputs.add(CompareRow.of(
                    origin(m, a.body(), b.body()),
                    OptionalDouble.of(a.body().mm(m)),
                    OptionalDouble.of(b.body().mm(m)),
                    "mm"));
        }
        inputs.add(Table.keys());
        return inputs.rows.values().stream().filter(CompareRow::differs).toList();
    }

    /** The rows of a table for two makes, without those of the measures, of which the bodies know more. */
    public static List<CompareRow> of(MakeFile a, MakeFile b, Keys table) {
        CompareInputs inputs = new CompareInputs(a, b);
        inputs.add(table);
        return inputs.rows.values().stream().filter(CompareRow::differs).toList();
    }

    private void add(Keys table) {
        table.all().stream()
                .filter(k -> !NAMES.contains(k.path()) && !k.path().startsWith("wearer.measurements"))
                .forEach(this::add);
    }

    private void add(CompareRow row) {
        rows.put(row.what(), row);
    }

    private <T> void add(Key<T> key) {
        Optional<T> one = key.lens().get().apply(a);
        Optional<T> other = key.lens().get().apply(b);
        String what = key.path().replaceFirst("^wearer\\.", "").replace('.', ' ');
        switch (key.kind().input()) {
            case SECTION -> {}
            case SECTIONS -> lists(what, key.parts().all(), listed(one), listed(other));
            default -> add(row(what, key.kind(), one, other));
        }
        key.echo()
                .assumed()
                .ifPresent(is -> add(CompareRow.words(
                        Tell.said("compare.assumed", Part.text(what)), yes(is.apply(a)), yes(is.apply(b)))));
    }

    private <T> CompareRow row(String what, Kind<T> kind, Optional<T> one, Optional<T> other) {
        OptionalDouble first = one.map(kind::amount).orElse(OptionalDouble.empty());
        OptionalDouble second = other.map(kind::amount).orElse(OptionalDouble.empty());
        boolean numbers = first.isPresent() == one.isPresent() && second.isPresent() == other.isPresent();
        return numbers && (one.isPresent() || other.isPresent())
                ? CompareRow.of(Part.text(what), first, second, kind.symbol())
                : CompareRow.words(
                        Part.text(what),
                        words(kind, one, a.unit()),
                        // what is the same is told the same, whatever the units of the two
                        words(kind, other, one.equals(other) ? a.unit() : b.unit()));
    }

    private static <T> Part words(Kind<T> kind, Optional<T> value, Unit unit) {
        return Part.text(value.map(v -> Voice.of(unit).say(kind.shown(v))).orElse("-"));
    }

    private static Part yes(boolean is) {
        return is ? Tell.said("compare.yes") : Tell.said("compare.no");
    }

    @SuppressWarnings("unchecked") // asked of keys whose kind holds a list of sections
    private static List<Answers> listed(Optional<?> value) {
        return value.map(v -> (List<Answers>) v).orElse(List.of());
    }

    /** Lists part by part: those whose first key says the same are the same part. */
    private void lists(String what, List<Key<?>> parts, List<Answers> one, List<Answers> other) {
        Map<String, Answers> first = named(parts.get(0), one);
        Map<String, Answers> second = named(parts.get(0), other);
        Set<String> names = new LinkedHashSet<>(first.keySet());
        names.addAll(second.keySet());
        for (String name : names) {
            parts.forEach(k -> part(
                    what + " " + name + " " + k.path(),
                    k,
                    first.getOrDefault(name, Answers.NONE),
                    second.getOrDefault(name, Answers.NONE)));
        }
    }

    private <T> void part(String what, Key<T> key, Answers one, Answers other) {
        add(row(what, key.kind(), key.of(one), key.of(other)));
    }

    private <T> Map<String, Answers> named(Key<T> first, List<Answers> all) {
        Map<String, Answers> out = new LinkedHashMap<>();
        for (Answers one : all) {
            String name = first.of(one)
                    .map(v -> Voice.of(a.unit()).say(first.kind().shown(v)))
                    .orElse("");
            out.put(name.isEmpty() ? Integer.toString(out.size() + 1) : name, one);
        }
        return out;
    }

    /** A measure, and where it was not taken. */
    private static Part origin(Measure m, Body a, Body b) {
        if (a.isGiven(m) && b.isGiven(m)) {
            return m.said();
        }
        return a.isGiven(m)
                ? Tell.said("compare.estimated-b", m.said())
                : b.isGiven(m) ? Tell.said("compare.estimated-a", m.said()) : Tell.said("compare.estimated", m.said());
    }
}
