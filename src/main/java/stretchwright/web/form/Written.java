package stretchwright.web.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import stretchwright.ground.Findings;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.Table;
import stretchwright.intake.Tree;
import stretchwright.intake.YamlTree;

/** The text of a make as it would be typed into the fields, by whatever names its keys are written. */
final class Written {
    private final Map<String, List<String>> fields = new LinkedHashMap<>();

    private Written() {}

    /** @param text of a make, or of a part of one, that reads without a finding */
    static Map<String, List<String>> of(String text) {
        Written written = new Written();
        YamlTree.read(text, new Findings("make")).ifPresent(file -> written.section(file, "", "", Table.keys()));
        return written.fields;
    }

    /**
     * @param section as the table calls it
     * @param at the same with the numbers of its places in lists
     */
    private void section(Tree.Keys tree, String section, String at, Keys table) {
        for (String name : tree.names()) {
            Key<?> key = table.named(section, name).orElseThrow();
            value(
                    Objects.requireNonNull(tree.entries().get(name)),
                    key,
                    at.isEmpty() ? key.name() : at + "." + key.name(),
                    table);
        }
    }

    private void value(Tree value, Key<?> key, String path, Keys table) {
        if (key.path().equals(Form.VERSION)) {
            return;
        }
        if (value instanceof Tree.Keys inside) {
            section(inside, key.path(), path, table);
        } else if (key.input() == Input.SECTIONS) {
            places(value, key, path);
        } else {
            Optional<Key<?>> stands = key.whereValueStands(table);
            stands.ifPresent(
                    k -> fields.put(path + k.path().substring(key.path().length()), typed(value, k.input())));
        }
    }

    /** A word in the place of a list, such as none, is no place. */
    private void places(Tree value, Key<?> key, String path) {
        if (value instanceof Tree.Items list) {
            int number = 0;
            for (Tree one : list.items()) {
                number++;
                if (one instanceof Tree.Keys inside) {
                    section(inside, "", path + "." + number, key.parts());
                }
            }
        }
    }

    static List<String> typed(Tree value, Input input) {
        if (value instanceof Tree.Items list) {
            List<String> all = list.items().stream().map(Written::text).toList();
            return input == Input.MANY ? all : List.of(String.join("; ", all));
        }
        return List.of(text(value));
    }

    private static String text(Tree value) {
        return value instanceof Tree.Items pair
                ? pair.items().stream().map(Written::text).collect(Collectors.joining(" = "))
                : value instanceof Tree.Text text ? text.text().strip() : "";
    }
}
