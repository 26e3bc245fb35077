package stretchwright.web.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;

/** What was typed as the tree of a make file: maps, lists and texts, in the order of the table of keys. */
final class FormTree {
    private final Form form;

    FormTree(Form form) {
        this.form = form;
    }

    Map<String, Object> of(Keys table) {
        return section(table, "", "");
    }

    private Map<String, Object> section(Keys table, String section, String at) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Key<?> key : table.inside(section)) {
            String path = at.isEmpty() ? key.name() : at + "." + key.name();
            if (!path.equals(Form.VERSION)) {
                value(table, key, path).ifPresent(v -> out.put(key.name(), v));
            }
        }
        return out;
    }

    private Optional<Object> value(Keys table, Key<?> key, String path) {
        if (key.input() == Input.SECTIONS) {
            return Optional.<Object>of(places(key, path)).filter(l -> !((List<?>) l).isEmpty());
        }
        Map<String, Object> inside = section(table, key.path(), path);
        if (!inside.isEmpty()) {
            return Optional.of(inside); // what stands beside it is a finding of the form
        }
        return key.input() == Input.SECTION ? Optional.empty() : typed(new Field(path, key));
    }

    private List<Object> places(Key<?> key, String path) {
        List<Object> out = new ArrayList<>();
        for (int i = 1; i < form.places(path); i++) {
            out.add(section(key.parts(), "", path + "." + i));
        }
        return out;
    }

    private Optional<Object> typed(Field field) {
        String text = form.value(field.key()).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (field.input()) {
                    case MANY -> form.typed().getOrDefault(field.key(), List.of());
                    case LIST -> text.contains("=") ? pairs(text) : listed(text);
                    case PAIRS -> pairs(text);
                    case TEXT, CHOICE, CHECK, SECTION, SECTIONS -> withUnit(text, field.symbol());
                });
    }

    /** The unit that stands beside the field goes behind a bare number; lengths have theirs by the file. */
    private static String withUnit(String text, String unit) {
        return unit.isEmpty() || !text.matches("[0-9.,/ +-]+") ? text : text + " " + unit;
    }

    /** One value as it is; several separated by semicolons, or by commas with a space behind, as the make file does. */
    private static Object listed(String text) {
        List<String> all = Arrays.stream(text.replaceAll("[\\[\\]]", "").split(";|,\\s+"))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .toList();
        return all.size() == 1 ? all.get(0) : all;
    }

    /** As the hint writes them, or as the make file does. */
    private static List<Object> pairs(String text) {
        String plain = text.replaceAll("\\]\\s*,\\s*\\[", ";");
        if (!plain.equals(text) || text.startsWith("[")) {
            plain = plain.replaceAll("[\\[\\]]", "").replace(',', '=');
        }
        List<Object> pairs = new ArrayList<>();
        for (String pair : plain.split("[;\\r\\n]+")) {
            if (!pair.isBlank()) {
                pairs.add(Arrays.stream(pair.split("=")).map(String::strip).toList());
            }
        }
        return pairs;
    }
}
