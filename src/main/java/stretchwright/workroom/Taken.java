package stretchwright.workroom;

import java.time.LocalDate;
import java.time.Period;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.intake.MakeText;
import stretchwright.intake.Tree;
import stretchwright.intake.WearerKeys;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * When each measure of a wearer was taken: on the day that the wearer's text says, or, where it came later, on the day on which
 * it came into the workroom as it is now.
 */
public record Taken(Map<Measure, LocalDate> days) {
    public Taken {
        Map<Measure, LocalDate> all = new EnumMap<>(Measure.class);
        all.putAll(days);
        days = java.util.Collections.unmodifiableMap(all);
    }

    public static Taken of(Workroom room, Thing wearer) {
        List<Version> versions = room.store().versions(wearer.id());
        Tree.Keys now = section(room.standing(wearer).text());
        Optional<LocalDate> said = said(now);
        Map<Measure, LocalDate> days = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            Optional<String> readings = readings(now, measure);
            if (readings.isPresent()) {
                Version first = versions.stream()
                        .filter(v -> readings(section(v.text()), measure).equals(readings))
                        .findFirst()
                        .orElseThrow();
                LocalDate came = room.day(first.at());
                boolean later = first != versions.get(0);
                days.put(
                        measure,
                        said.filter(day -> !later || came.isBefore(day)).orElse(came));
            }
        }
        return new Taken(days);
    }

    /** The day since when all of them are known; empty where none is. */
    public Optional<LocalDate> oldest() {
        return days.values().stream().min(LocalDate::compareTo);
    }

    /** Those that are older today than measures may be. */
    public List<Measure> due(Period after, LocalDate today) {
        return days.entrySet().stream()
                .filter(e -> e.getValue().plus(after).isBefore(today))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Tree.Keys section(String text) {
        return Parts.section(Parts.tree(text), Kind.WEARER).orElse(new Tree.Keys(Map.of(), 0));
    }

    /** As they are written, each leg's own too; empty where it was not taken. */
    private static Optional<String> readings(Tree.Keys section, Measure measure) {
        return Parts.key(Kind.WEARER.word(), "measurements", section)
                .filter(Tree.Keys.class::isInstance)
                .flatMap(m -> Parts.key("wearer.measurements", measure.term(), (Tree.Keys) m))
                .map(t -> MakeText.of(new Tree.Keys(Map.of("is", t), 0)));
    }

    /** The day of all that is there; empty where none is said, or one that no calendar has. */
    private static Optional<LocalDate> said(Tree.Keys section) {
        return Parts.key(Kind.WEARER.word(), WearerKeys.MEASURED_ON.name(), section)
                .filter(Tree.Text.class::isInstance)
                .flatMap(t -> Due.day(((Tree.Text) t).text()));
    }
}
