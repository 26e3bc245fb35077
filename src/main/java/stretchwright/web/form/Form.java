package stretchwright.web.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import stretchwright.intake.Keys;
import stretchwright.intake.MakeText;
import stretchwright.intake.Table;

/** What stands in the form, key by key, and the make file it says. Every value passes into the file as typed, safely quoted. */
public record Form(Map<String, List<String>> typed) {
    public static final String VERSION = "stretchwright";

    public Form {
        Map<String, List<String>> all = new LinkedHashMap<>();
        typed.forEach((key, values) -> all.put(key, List.copyOf(values)));
        typed = java.util.Collections.unmodifiableMap(all);
    }

    public static Form empty() {
        return new Form(Map.of());
    }

    /** As it was sent: of lists the places that were left empty are closed up. */
    public static Form sent(Map<String, List<String>> typed) {
        return new Form(Places.closed(typed));
    }

    /** As the text of a make says it. */
    public static Form of(String text) {
        return new Form(Written.of(text));
    }

    /** The same with other values; an empty one is left out. */
    public Form with(Map<String, String> changes) {
        Map<String, List<String>> all = new LinkedHashMap<>(typed);
        changes.forEach((key, value) -> {
            all.remove(key);
            if (!value.isBlank()) {
                all.put(key, List.of(value.strip()));
            }
        });
        return new Form(all);
    }

    public String value(String key) {
        List<String> values = typed.getOrDefault(key, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }

    public boolean ticked(String key, String option) {
        return typed.getOrDefault(key, List.of()).contains(option);
    }

    /** Whether anything was typed under a key or in its section. */
    public boolean has(String key) {
        return typed.entrySet().stream()
                .anyMatch(e -> (e.getKey().equals(key) || e.getKey().startsWith(key + "."))
                        && e.getValue().stream().anyMatch(v -> !v.isBlank()));
    }

    /** How many places of a list are shown: one more than are filled. */
    int places(String list) {
        int filled = 0;
        while (has(list + "." + (filled + 1))) {
            filled++;
        }
        return filled + 1;
    }

    /** The make file, YAML 1.2. */
    public String makeText() {
        return makeText(Table.keys());
    }

    String makeText(Keys table) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put(VERSION, "1");
        file.putAll(new FormTree(this).of(table));
        return MakeText.of(file);
    }

    /** Keys of lists, with the numbers of their places, in order. */
    private static final class Places {
        /** Each list's places numbered anew from 1, the lists inside them too. */
        static Map<String, List<String>> closed(Map<String, List<String>> typed) {
            Map<String, List<String>> out = new LinkedHashMap<>();
            Map<String, TreeSet<Integer>> used = new LinkedHashMap<>();
            typed.forEach((key, values) -> {
                if (values.stream().anyMatch(v -> !v.isBlank())) {
                    steps(key)
                            .forEach(s -> used.computeIfAbsent(s.list, l -> new TreeSet<>())
                                    .add(s.number));
                    out.put(key, values);
                }
            });
            Map<String, List<String>> closed = new LinkedHashMap<>();
            out.forEach((key, values) -> closed.computeIfAbsent(renumbered(key, used), k -> new ArrayList<>())
                    .addAll(values)); // 1 and 01 are one place
            return closed;
        }

        private record Step(String list, int number) {}

        private static List<Step> steps(String key) {
            List<Step> out = new ArrayList<>();
            StringBuilder at = new StringBuilder();
            for (String step : key.split("\\.")) {
                if (step.matches("[0-9]{1,4}")) {
                    out.add(new Step(at.toString(), Integer.parseInt(step)));
                }
                at.append(at.isEmpty() ? "" : ".").append(step);
            }
            return out;
        }

        private static String renumbered(String key, Map<String, TreeSet<Integer>> used) {
            StringBuilder at = new StringBuilder();
            StringBuilder out = new StringBuilder();
            for (String step : key.split("\\.")) {
                boolean number = step.matches("[0-9]{1,4}");
                String own = number
                        ? Integer.toString(Objects.requireNonNull(used.get(at.toString()))
                                .headSet(Integer.parseInt(step), true)
                                .size())
                        : step;
                out.append(out.isEmpty() ? "" : ".").append(own);
                at.append(at.isEmpty() ? "" : ".").append(step);
            }
            return out.toString();
        }
    }
}
