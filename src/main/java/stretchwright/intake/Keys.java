package stretchwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The table of keys: every key of the make file, in the order in which they are told. */
public final class Keys {
    private final Map<String, Key<?>> rows;
    private final Map<String, List<Key<?>>> inside = new LinkedHashMap<>();

    static final Keys NONE = of(List.of());

    private Keys(Map<String, Key<?>> rows) {
        this.rows = rows;
        rows.values()
                .forEach(k -> inside.computeIfAbsent(k.section(), s -> new ArrayList<>())
                        .add(k));
    }

    static Keys of(List<Key<?>> all) {
        Map<String, Key<?>> rows = new LinkedHashMap<>();
        for (Key<?> key : all) {
            if (rows.put(key.path(), key) != null) {
                throw new IllegalStateException("two rows for " + key.path());
            }
        }
        return new Keys(rows);
    }

    /** With another row behind those of its section, or in place of the one with its path. */
    Keys with(Key<?> key) {
        Map<String, Key<?>> other = new LinkedHashMap<>(rows);
        if (other.replace(key.path(), key) != null) {
            return new Keys(other);
        }
        List<Key<?>> all = new ArrayList<>(rows.values());
        int behind = all.size();
        while (behind > 0 && !isIn(all.get(behind - 1), key.section())) {
            behind--;
        }
        all.add(behind, key);
        return of(all);
    }

    private static boolean isIn(Key<?> row, String section) {
        return section.isEmpty() || row.path().equals(section) || row.path().startsWith(section + ".");
    }

    /** Every row; those of the keys inside a list stand with the list. */
    public List<Key<?>> all() {
        return List.copyOf(rows.values());
    }

    public Optional<Key<?>> find(String path) {
        return Optional.ofNullable(rows.get(path));
    }

    /** The key that a name in a section means. */
    public Optional<Key<?>> named(String section, String name) {
        return inside(section).stream().filter(k -> k.isCalled(name)).findFirst();
    }

    /** The keys that stand directly in a section, "" for the file itself. */
    public List<Key<?>> inside(String section) {
        return List.copyOf(inside.getOrDefault(section, List.of()));
    }
}
