package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;

/** Whether makes can lie on one roll: what of the cloth and of the lay has to be the same in all files, as the rows of the table say. */
public final class OneRoll {
    private OneRoll() {}

    /** What differs from the first file: the first such key of each other file. */
    public static List<Finding> findings(List<MakeFile> makes) {
        return findings(makes, Table.keys());
    }

    static List<Finding> findings(List<MakeFile> makes, Keys table) {
        List<Finding> out = new ArrayList<>();
        MakeFile first = makes.get(0);
        for (MakeFile other : makes) {
            table.all().stream()
                    .filter(k -> k.roll() != Roll.ANY)
                    .flatMap(k -> differs(k, first, other).stream())
                    .findFirst()
                    .filter(f -> !out.contains(f))
                    .ifPresent(out::add);
        }
        return out;
    }

    private static <T> Optional<Finding> differs(Key<T> key, MakeFile first, MakeFile other) {
        Optional<T> one = key.lens().get().apply(first).or(key::usual);
        Optional<T> its = key.lens().get().apply(other).or(key::usual);
        boolean told = one.isPresent() && its.isPresent();
        boolean compared = told || key.roll() == Roll.SAME;
        if (!compared || one.map(key.kind()::json).equals(its.map(key.kind()::json))) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                other.file(),
                key.path(),
                0,
                Tell.said("roll.differs", shown(key, its), shown(key, one), Part.text(first.file())),
                Tell.said("roll.same"),
                other.unit()));
    }

    private static <T> Part shown(Key<T> key, Optional<T> value) {
        return value.map(key.kind()::shown).orElse(Tell.said("roll.none"));
    }
}
