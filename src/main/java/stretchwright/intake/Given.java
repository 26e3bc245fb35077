package stretchwright.intake;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/**
 * What one file, or one section of a list in it, gives under the keys of its table: the values, where they stand, and where
 * findings about several of them together go.
 */
final class Given {
    private final String path;
    private final int line;
    private final Findings findings;
    private final Optional<Unit> unit;
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final Map<String, Tree> trees = new HashMap<>();
    private final Map<String, String> paths = new HashMap<>();
    private final Set<String> twice = new HashSet<>();
    private final Map<String, List<Given>> lists = new HashMap<>();

    /**
     * @param path of the section of a list, in full; empty for the file
     * @param line where that section begins; 0 for the file
     */
    Given(String path, int line, Findings findings, Optional<Unit> unit) {
        this.path = path;
        this.line = line;
        this.findings = findings;
        this.unit = unit;
    }

    Optional<Unit> unit() {
        return unit;
    }

    Findings findings() {
        return findings;
    }

    /** How many findings there are so far. */
    int problems() {
        return findings.all().size();
    }

    /** Something stands there, right or wrong, under this name. */
    void found(Key<?> key, Tree tree, String at) {
        trees.put(key.path(), tree);
        paths.put(key.path(), at);
    }

    /** It stands there under two names, so none of them was looked into; that is a finding already. */
    void foundTwice(Key<?> key, Tree tree, String at) {
        found(key, tree, at);
        twice.add(key.path());
    }

    <T> void put(Key<T> key, T value) {
        values.put(key.path(), value);
    }

    void put(Key<List<Answers>> key, List<Given> sections) {
        lists.put(key.path(), List.copyOf(sections));
        values.put(key.path(), sections.stream().map(Given::answers).toList());
    }

    Spot place(Key<?> key, Tree tree, String at) {
        return new Spot(tree, at, key.like(unit), findings, unit);
    }

    /** Whether something stands there, right or wrong. */
    boolean has(Key<?> key) {
        return trees.containsKey(key.path());
    }

    /** Whether something stands there that was looked into. */
    boolean isRead(Key<?> key) {
        return has(key) && !twice.contains(key.path());
    }

    boolean isSection(Key<?> key) {
        return trees.get(key.path()) instanceof Tree.Keys;
    }

    /** The value as given; empty where it is not there or wrong. */
    @SuppressWarnings("unchecked") // put() and the reader put under a path what its key holds
    <T> Optional<T> get(Key<T> key) {
        return Optional.ofNullable((T) values.get(key.path()));
    }

    /** The value as given, or the usual one of its row. */
    <T> T orUsual(Key<T> key) {
        return get(key).orElseGet(() -> key.usual().orElseThrow());
    }

    /** The sections of a list. */
    List<Given> each(Key<List<Answers>> key) {
        return lists.getOrDefault(key.path(), List.of());
    }

    /** A finding about a key, which may be missing. */
    void add(Key<?> key, Said wrong, Said right) {
        findings.at(path(key), line(key), wrong, right);
    }

    void missing(Key<?> key) {
        add(key, Need.lack(), Tell.said("example", Part.text(key.like(unit))));
    }

    /** The key in full, by the name under which it stands. */
    String path(Key<?> key) {
        return paths.getOrDefault(key.path(), Echo.path(path, key.path()));
    }

    private int line(Key<?> key) {
        Tree tree = trees.get(key.path());
        return tree == null ? line : tree.line();
    }

    Answers answers() {
        return new Answers(values);
    }
}
