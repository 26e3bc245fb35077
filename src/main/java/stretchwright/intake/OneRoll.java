package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Whether makes can lie on one roll: what of the cloth and of the lay has to be the same in all files, as the rows of the table say. */
public final class OneRoll {
    private final Keys table;

    private OneRoll(Keys table) {
        this.table = table;
    }

    /**
     * Each file is held against those before it that go together: where it differs from one of them, a finding about the
     * cloth, one about the lay.
     */
    public static List<Finding> findings(List<MakeFile> makes) {
        return findings(makes, Table.keys());
    }

    static List<Finding> findings(List<MakeFile> makes, Keys table) {
        OneRoll roll = new OneRoll(table);
        List<Finding> out = new ArrayList<>();
        List<MakeFile> together = new ArrayList<>();
        for (MakeFile other : makes) {
            List<Finding> wrong = together.stream()
                    .map(one -> roll.findings(one, other))
                    .filter(f -> !f.isEmpty())
                    .findFirst()
                    .orElse(List.of());
            if (wrong.isEmpty()) {
                together.add(other);
            } else if (!out.containsAll(wrong)) {
                out.addAll(wrong);
            }
        }
        return out;
    }

    private List<Finding> findings(MakeFile one, MakeFile other) {
        return Stream.of(Roll.About.values())
                .flatMap(about -> finding(about, one, other).stream())
                .toList();
    }

    /** What differs under one key: its value there, and in the file before. */
    private record Differing(Key<?> key, Part its, Part before) {}

    /** Under the first key that differs; the others follow behind it. */
    private Optional<Finding> finding(Roll.About about, MakeFile one, MakeFile other) {
        List<Differing> all = table.all().stream()
                .filter(k -> k.roll().about().filter(about::equals).isPresent())
                .flatMap(k -> differing(k, one, other).stream())
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Differing first = all.get(0);
        Said wrong = Tell.said("roll.differs", first.its, first.before, Part.text(one.file()));
        for (Differing more : all.subList(1, all.size())) {
            wrong = wrong.and(Tell.said("roll.too", Part.text(more.key.path()), more.its, more.before));
        }
        boolean cloth = about == Roll.About.CLOTH;
        return Optional.of(new Finding(
                other.file(),
                first.key.path(),
                0,
                wrong.and(cloth ? Tell.said("roll.one-cloth") : Tell.said("roll.one-way")),
                cloth ? Tell.said("roll.same-cloth") : Tell.said("roll.same-lay"),
                other.unit()));
    }

    private static <T> Optional<Differing> differing(Key<T> key, MakeFile one, MakeFile other) {
        Optional<T> before = told(key, one);
        Optional<T> its = told(key, other);
        boolean both = before.isPresent() && its.isPresent();
        boolean alike = both
                ? key.roll().alike().test(before.get(), its.get())
                : key.roll().whereTold() || before.isPresent() == its.isPresent();
        return alike ? Optional.empty() : Optional.of(new Differing(key, shown(key, its), shown(key, before)));
    }

    /** What a make says, and where it must say it, what is usual; nothing where it is assumed. */
    private static <T> Optional<T> told(Key<T> key, MakeFile make) {
        Optional<T> value = key.lens().get().apply(make);
        boolean assumed = key.echo().assumed().map(is -> is.apply(make)).orElse(false);
        return key.roll().whereTold() ? value.filter(v -> !assumed) : value.or(key::usual);
    }

    private static <T> Part shown(Key<T> key, Optional<T> value) {
        return value.map(key.kind()::shown).orElse(Tell.said("roll.none"));
    }
}
