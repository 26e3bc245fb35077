package stretchwright.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands in the form, and the make file it says. Every value passes into the file as typed, safely quoted. */
record Form(Map<String, List<String>> typed) {
    Form {
        typed = Map.copyOf(typed);
    }

    /** The first page: the example filled in. */
    static Form example() {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (Field f : Fields.all()) {
            List<String> values =
                    f.kind() == Field.Kind.MANY ? List.of(f.example().split("; ")) : List.of(f.example());
            if (!f.example().isEmpty()) {
                typed.put(f.key(), values);
            }
        }
        return new Form(typed);
    }

    String value(String key) {
        List<String> values = typed.getOrDefault(key, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }

    boolean ticked(String key, String option) {
        return typed.getOrDefault(key, List.of()).contains(option);
    }

    /** The make file, YAML 1.2. */
    String makeText() {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("stretchwright", "1");
        for (Field f : Fields.all()) {
            boolean unused = f.key().startsWith("boot.") && value(Fields.BOOT).isEmpty();
            if (!unused && !f.key().equals(Fields.BOOT)) {
                put(file, f);
            }
        }
        return MakeText.of(file);
    }

    private void put(Map<String, Object> file, Field f) {
        Map<String, Object> at = file;
        String[] path = f.key().split("\\.");
        for (int i = 0; i < path.length - 1; i++) {
            if (path[i].equals("cuff") && value(f.key()).isBlank()) {
                return; // an empty cuff is no cuff, not a cuff without a height
            }
            at = inside(at, path[i]);
        }
        String last = path[path.length - 1];
        String text = value(f.key()).strip();
        switch (f.kind()) {
            case MANY -> at.put(last, typed.getOrDefault(f.key(), List.of()));
            case CHECK -> at.put(last, text.isEmpty() ? "false" : "true");
            case READINGS -> {
                if (!text.isEmpty()) {
                    at.put(last, readings(text));
                }
            }
            case LENGTHS -> {
                if (!text.isEmpty()) {
                    at.put(last, lengths(text));
                }
            }
            default -> {
                if (!text.isEmpty()) {
                    at.put(last, withUnit(text, f.unit()));
                }
            }
        }
    }

    @SuppressWarnings("unchecked") // only maps are put under the names of sections
    private static Map<String, Object> inside(Map<String, Object> file, String name) {
        return (Map<String, Object>) file.computeIfAbsent(name, n -> new LinkedHashMap<String, Object>());
    }

    /** The unit that stands beside the field goes behind a bare number; lengths and years have theirs by the format. */
    private static String withUnit(String text, String unit) {
        boolean own = unit.isEmpty() || unit.equals(Field.LENGTH) || unit.equals("years");
        return own || !text.matches("[0-9.,/ +-]+") ? text : text + " " + unit;
    }

    /** Separated by semicolons, or by commas with a space behind, as the make file does: a decimal comma stays whole. */
    private static List<String> lengths(String text) {
        return Arrays.stream(text.replaceAll("[\\[\\]]", "").split(";|,\\s+"))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .toList();
    }

    /** As the hint writes them, or as the make file does. */
    private static List<Object> readings(String text) {
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
