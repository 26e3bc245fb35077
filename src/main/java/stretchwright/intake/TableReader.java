package stretchwright.intake;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;

/**
 * Reads the keys of a file by the table: each by its kind, with what is unknown, missing or there twice as findings. What
 * goes together across keys is not looked at here.
 */
final class TableReader {
    private final Keys table;
    private final Given given;
    private final String path;

    private TableReader(Keys table, Given given, String path) {
        this.table = table;
        this.given = given;
        this.path = path;
    }

    /** A whole file. */
    static Given file(Tree.Keys file, Keys table, Findings findings, Optional<Unit> unit) {
        return read(file, table, new Given("", 0, findings, unit), "");
    }

    private static Given read(Tree.Keys tree, Keys table, Given given, String path) {
        new TableReader(table, given, path).section(tree, "", path);
        return given;
    }

    /** @param section by the table; at: by the file, where a synonym may stand for a step */
    private void section(Tree.Keys tree, String section, String at) {
        List<Key<?>> rows = table.inside(section);
        Set<Key<?>> doubled = doubled(tree, section);
        // a row is itself alone: to hash all that is known of it would be work for nothing
        Map<Key<?>, String> seen = new IdentityHashMap<>();
        List<String> unknown = new ArrayList<>();
        for (String name : tree.names()) {
            Optional<Key<?>> key = table.named(section, name);
            if (key.isEmpty()) {
                unknown.add(name);
            } else if (seen.containsKey(key.get())) {
                twice(tree, name, seen.get(key.get()), at);
            } else if (doubled.contains(key.get())) {
                seen.put(key.get(), name);
                given.foundTwice(
                        key.get(),
                        java.util.Objects.requireNonNull(tree.entries().get(name)),
                        Echo.path(at, name));
            } else {
                seen.put(key.get(), name);
                value(key.get(), java.util.Objects.requireNonNull(tree.entries().get(name)), Echo.path(at, name));
            }
        }
        new UnknownKeys(table, section, at, given.findings()).tell(tree, unknown);
        rows.stream().filter(k -> k.need().always() && !seen.containsKey(k)).forEach(k -> given.missing(k));
    }

    /** Rows that stand under two names, once at least as a section: which is to go is not known, so neither is looked into. */
    private Set<Key<?>> doubled(Tree.Keys tree, String section) {
        Map<Key<?>, Integer> names = new IdentityHashMap<>();
        Map<Key<?>, Integer> sections = new IdentityHashMap<>();
        tree.entries()
                .forEach((name, value) -> table.named(section, name).ifPresent(key -> {
                    names.merge(key, 1, Integer::sum);
                    sections.merge(key, value instanceof Tree.Keys ? 1 : 0, Integer::sum);
                }));
        names.keySet().removeIf(key -> names.getOrDefault(key, 0) < 2 || sections.getOrDefault(key, 0) == 0);
        return names.keySet();
    }

    private void twice(Tree.Keys tree, String name, String before, String at) {
        given.findings()
                .at(
                        Echo.path(at, name),
                        line(tree, name),
                        Tell.said("key.same", Tell.quoted(before), Part.count(line(tree, before))),
                        Tell.said("key.keep-one"));
    }

    private static int line(Tree.Keys tree, String name) {
        Tree at = tree.entries().get(name);
        return at == null ? tree.line() : at.line();
    }

    private <T> void value(Key<T> key, Tree tree, String at) {
        given.found(key, tree, at);
        if (tree instanceof Tree.Keys inside && !table.inside(key.path()).isEmpty()) {
            inside(key, inside, at);
        } else if (key.kind() instanceof SectionsKind kind) {
            sections(key, kind, tree, at);
        } else if (key.kind() instanceof SectionKind kind
                && kind.instead().isPresent()
                && !(tree instanceof Tree.Keys)) {
            instead(key, kind.instead().get(), tree, at);
        } else {
            key.kind().read(given.place(key, tree, at)).ifPresent(v -> given.put(key, v));
        }
    }

    private void inside(Key<?> key, Tree.Keys tree, String at) {
        boolean mayBeEmpty = key.kind() instanceof SectionKind kind && kind.empty();
        boolean asksForSome = table.inside(key.path()).stream()
                .anyMatch(k -> k.need().always() || !k.need().oneOf().isEmpty());
        if (tree.names().isEmpty() && !mayBeEmpty && !asksForSome) {
            Part like = Part.text(table.inside(key.path()).get(0).like(given.unit()));
            given.findings().at(at, tree.line(), Tell.said("section.empty"), Tell.said("example", like));
            return;
        }
        section(tree, key.path(), at);
    }

    @SuppressWarnings("unchecked") // a key whose kind is SectionsKind holds answers
    private void sections(Key<?> key, SectionsKind kind, Tree tree, String at) {
        List<Given> all = new ArrayList<>();
        List<Tree.Keys> sections = kind.sections(given.place(key, tree, at));
        for (Tree.Keys section : sections) {
            String one = Echo.path(at, Integer.toString(all.size() + 1));
            all.add(read(section, kind.inside(), new Given(one, section.line(), given.findings(), given.unit()), one));
        }
        given.put((Key<List<Answers>>) key, all);
    }

    /** The value of the key inside, written without the section: findings name it as it stands there. */
    private void instead(Key<?> key, String name, Tree tree, String at) {
        Key<?> inside = table.find(key.path() + "." + name).orElseThrow();
        value(inside, tree, at);
    }
}
