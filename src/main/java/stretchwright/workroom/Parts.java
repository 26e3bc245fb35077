package stretchwright.workroom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Unit;
import stretchwright.intake.FileKeys;
import stretchwright.intake.FirstPairKeys;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.LearntKeys;
import stretchwright.intake.MakeFile;
import stretchwright.intake.MakeText;
import stretchwright.intake.Table;
import stretchwright.intake.Tree;
import stretchwright.intake.YamlTree;
import stretchwright.workroom.store.Kind;

/**
 * A make file as the things it is made of. Each is a text of its own in the same format, with the unit behind every length, so
 * that it may be put into any other make.
 */
final class Parts {
    /** Kinds that have a section of the make file, which is called as they are. */
    static final List<Kind> KINDS = List.of(Kind.WEARER, Kind.FABRIC, Kind.BOOT, Kind.STYLE);

    /** What was learnt from one wearer in one cloth. */
    private static final List<String> LEARNT = List.of(LearntKeys.LEARNT.path(), FirstPairKeys.FIRST_PAIR.path());

    /** The byte order mark that some editors put before a text. */
    private static final String MARK = "\uFEFF";

    private Parts() {}

    /** The sections of a text that was read without a finding before. */
    static Tree.Keys tree(String text) {
        Findings findings = new Findings("workroom");
        Optional<Tree.Keys> keys = YamlTree.read(text.startsWith(MARK) ? text.substring(1) : text, findings);
        findings.throwIfAny();
        return keys.orElseThrow();
    }

    /** The thing of a kind that a make file holds, as a text of its own; empty where it has no such section. */
    static Optional<String> of(Tree.Keys file, Kind kind) {
        return section(file, kind).map(s -> text(unit(file), kind, carried(s, kind, unit(file))));
    }

    /** A thing's text from its section alone. */
    static String text(Unit unit, Kind kind, Tree.Keys section) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put(FileKeys.versionKey(), Integer.toString(MakeFile.VERSION));
        out.put(FileKeys.UNIT.name(), unit.symbol());
        return MakeText.of(out) + MakeText.of(new Tree.Keys(Map.of(kind.word(), section), 0));
    }

    /** The section of a kind; a value that stands for a section (boot: none) is none. */
    static Optional<Tree.Keys> section(Tree.Keys file, Kind kind) {
        return file.entries().entrySet().stream()
                .filter(e -> Table.keys()
                        .named("", e.getKey())
                        .filter(k -> k.path().equals(kind.word()))
                        .isPresent())
                .map(Map.Entry::getValue)
                .filter(Tree.Keys.class::isInstance)
                .map(Tree.Keys.class::cast)
                .findFirst();
    }

    /** A thing's text as it would be in whatever file: each length has its unit already. */
    static String withoutUnit(String text) {
        Map<String, Tree> out = new LinkedHashMap<>(tree(text).entries());
        out.keySet().removeIf(FileKeys.UNIT::isCalled);
        return MakeText.of(new Tree.Keys(out, 0));
    }

    /** Whether a name in a section means a key. */
    static boolean isCalled(String section, String key, String name) {
        return Table.keys()
                .named(section, name)
                .filter(k -> k.name().equals(key))
                .isPresent();
    }

    /** What stands under a key, by whatever name. */
    static Optional<Tree> key(String section, String key, Tree.Keys keys) {
        return keys.entries().entrySet().stream()
                .filter(e -> isCalled(section, key, e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * A make file in which the sections of other things stand in place of its own; remarks are gone, the rest is not touched.
     * What wear taught of a thing that is replaced, and what its first pair showed, goes with it.
     */
    static String with(String makeText, String name, Map<Kind, String> others) {
        boolean worn = others.containsKey(Kind.WEARER) || others.containsKey(Kind.FABRIC);
        return with(makeText, name, others, !worn);
    }

    /** @param learnt whether what wear taught still holds */
    static String with(String makeText, String name, Map<Kind, String> others, boolean learnt) {
        Tree.Keys make = tree(makeText);
        Map<String, Tree> out = new LinkedHashMap<>();
        make.entries().forEach((key, value) -> {
            String path = Table.keys().named("", key).map(Key::path).orElse(key);
            if (!isReplaced(path, others) && (learnt || !LEARNT.contains(path))) {
                out.put(key, path.equals(FileKeys.NAME.path()) ? new Tree.Text(name, 0) : value);
            }
            if (path.equals(FileKeys.UNIT.path())) {
                others.forEach((kind, text) -> section(tree(text), kind).ifPresent(s -> out.put(kind.word(), s)));
            }
        });
        others.forEach((kind, text) -> section(tree(text), kind).ifPresent(s -> out.putIfAbsent(kind.word(), s)));
        return MakeText.of(new Tree.Keys(out, 0));
    }

    private static boolean isReplaced(String path, Map<Kind, String> others) {
        return others.keySet().stream().anyMatch(k -> k.word().equals(path));
    }

    static Unit unit(Tree.Keys file) {
        return file.entries().entrySet().stream()
                .filter(e -> FileKeys.UNIT.isCalled(e.getKey()))
                .map(e -> ((Tree.Text) e.getValue()).text())
                .flatMap(word -> FileKeys.unit(word).stream())
                .findFirst()
                .orElse(Unit.MM);
    }

    private static Tree.Keys carried(Tree.Keys section, Kind kind, Unit unit) {
        return carried(section, kind.word(), Table.keys(), unit);
    }

    private static Tree.Keys carried(Tree.Keys section, String path, Keys table, Unit unit) {
        Map<String, Tree> out = new LinkedHashMap<>();
        section.entries()
                .forEach((name, tree) -> out.put(
                        name,
                        table.named(path, name)
                                .map(key -> carried(tree, key, table, unit))
                                .orElse(tree)));
        return new Tree.Keys(out, section.line());
    }

    private static Tree carried(Tree tree, Key<?> key, Keys table, Unit unit) {
        if (tree instanceof Tree.Keys inside && !table.inside(key.path()).isEmpty()) {
            return carried(inside, key.path(), table, unit);
        }
        if (tree instanceof Tree.Items list && key.input() == stretchwright.intake.Kind.Input.SECTIONS) {
            return new Tree.Items(
                    list.items().stream()
                            .map(i -> i instanceof Tree.Keys one ? carried(one, "", key.parts(), unit) : i)
                            .toList(),
                    list.line());
        }
        return key.whereValueStands(table)
                .map(k -> k.kind().carrying(tree, unit))
                .orElse(tree);
    }
}
