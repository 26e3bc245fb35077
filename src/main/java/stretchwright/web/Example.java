package stretchwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import stretchwright.ground.Findings;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.Table;
import stretchwright.intake.Tree;
import stretchwright.intake.YamlTree;

/**
 * The example that can be loaded into the form: an invented wearer with fabric and boot. Who puts own values in its place
 * must not keep the rest of hers without knowing it.
 */
final class Example {
    static final Map<String, List<String>> VALUES = values();

    /** Sections of things that belong together: the measures of one wearer, of one cloth, of one boot. */
    private static final List<String> WHOLE = List.of("wearer", "fabric", "boot");

    private Example() {}

    /** Fields that still hold the example's values in a section in which others were changed; none where all are hers. */
    static List<String> left(Form form) {
        List<String> out = new ArrayList<>();
        if (form.isExample()) {
            WHOLE.stream().filter(s -> isChanged(form, s)).forEach(s -> out.addAll(measured(form, s)));
        }
        return out;
    }

    /** Whether a field holds what the example does. */
    static boolean isHers(Form form, String key) {
        return form.isExample()
                && VALUES.containsKey(key)
                && form.typed().getOrDefault(key, List.of()).equals(VALUES.get(key));
    }

    private static boolean isChanged(Form form, String section) {
        return !inside(form.typed(), section).equals(inside(VALUES, section));
    }

    private static Map<String, List<String>> inside(Map<String, List<String>> all, String section) {
        return all.entrySet().stream()
                .filter(e -> e.getKey().startsWith(section + ".")
                        && e.getValue().stream().anyMatch(v -> !v.isBlank()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** What was measured or named; words that were chosen are seen at once, and may well be the same. */
    private static List<String> measured(Form form, String section) {
        return VALUES.keySet().stream()
                .filter(key -> key.startsWith(section + ".") && isHers(form, key))
                .filter(key -> Table.keys()
                        .find(key)
                        .filter(k -> k.input() != Input.CHOICE && k.input() != Input.CHECK)
                        .isPresent())
                .toList();
    }

    private static Map<String, List<String>> values() {
        try (InputStream in =
                Objects.requireNonNull(Example.class.getResourceAsStream("/stretchwright/web/example.yaml"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Tree.Keys file = YamlTree.read(text, new Findings("example")).orElseThrow();
            Map<String, List<String>> out = new LinkedHashMap<>();
            section(file, "", Table.keys(), out);
            return java.util.Collections.unmodifiableMap(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void section(Tree.Keys tree, String section, Keys table, Map<String, List<String>> out) {
        for (String name : tree.names()) {
            Key<?> key = table.named(section, name).orElseThrow();
            Tree value = Objects.requireNonNull(tree.entries().get(name));
            if (value instanceof Tree.Keys inside) {
                section(inside, key.path(), table, out);
            } else if (!key.path().equals(Form.VERSION)) {
                key.whereValueStands(table).ifPresent(k -> out.put(k.path(), typed(value, k.input())));
            }
        }
    }

    /** The example of a row as it would be typed into its field: "20 % = 3.1 N; 40 % = 6.9 N". */
    static String typed(Key<?> row, Unit unit) {
        String text = row.name() + ": " + row.example(unit);
        Tree.Keys one = YamlTree.read(text, new Findings("example")).orElseThrow();
        return String.join("; ", typed(Objects.requireNonNull(one.entries().get(row.name())), row.input()));
    }

    private static List<String> typed(Tree value, Input input) {
        if (value instanceof Tree.Items list) {
            List<String> all = list.items().stream().map(Example::text).toList();
            return input == Input.MANY ? all : List.of(String.join("; ", all));
        }
        return List.of(text(value));
    }

    private static String text(Tree value) {
        return value instanceof Tree.Items pair
                ? pair.items().stream().map(Example::text).collect(Collectors.joining(" = "))
                : value instanceof Tree.Text text ? text.text().strip() : "";
    }
}
