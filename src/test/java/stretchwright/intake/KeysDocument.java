package stretchwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/** The tables of docs/formats.md, from the table of keys. */
final class KeysDocument {
    private static final String END = "<!-- end of keys -->";

    private final Keys table;

    KeysDocument(Keys table) {
        this.table = table;
    }

    private static String begin(String section) {
        return "<!-- keys: " + section + " -->";
    }

    /** The document with each of its tables written anew; a section of the make file without a table is a fault. */
    String in(String document) {
        String out = document;
        for (String section : sections()) {
            int from = out.indexOf(begin(section));
            int to = out.indexOf(END, from);
            if (from < 0 || to < 0) {
                throw new IllegalStateException("no table for " + section);
            }
            out = out.substring(0, from) + begin(section) + "\n" + of(section) + out.substring(to);
        }
        return out;
    }

    /** "file" for the keys at the top that are no section, then the sections. */
    List<String> sections() {
        List<String> out = new ArrayList<>(List.of("file"));
        table.inside("").stream().filter(this::isSection).map(Key::path).forEach(out::add);
        return out;
    }

    private boolean isSection(Key<?> key) {
        return key.kind() instanceof SectionKind || key.kind() instanceof SectionsKind;
    }

    private String of(String section) {
        List<Line> lines = new ArrayList<>();
        for (Key<?> key : table.all()) {
            boolean here = section.equals("file")
                    ? key.section().isEmpty() && !isSection(key)
                    : key.path().equals(section) || key.path().startsWith(section + ".");
            if (here) {
                add(lines, key, "");
            }
        }
        return "| key | needed | what | allowed |\n|---|---|---|---|\n"
                + grouped(lines).stream().map(Line::text).collect(Collectors.joining());
    }

    private static void add(List<Line> lines, Key<?> key, String list) {
        lines.add(new Line(List.of(list + key.path()), key));
        if (key.kind() instanceof SectionsKind) {
            key.parts().all().forEach(k -> add(lines, k, list + key.path() + "[]."));
        }
    }

    /** Keys that share their help stand in one line; of those in lists only the first time. */
    private static List<Line> grouped(List<Line> lines) {
        Map<String, Line> out = new LinkedHashMap<>();
        for (Line line : lines) {
            String list = line.paths.get(0).replaceFirst("[^.]*$", "");
            String words = line.key.filled().isEmpty() ? list + line.key.words() : line.key.words();
            out.merge(words + line.key.kind().allowed(), line, Line::and);
        }
        return List.copyOf(out.values());
    }

    private record Line(List<String> paths, Key<?> key) {
        Line and(Line other) {
            List<String> all = new ArrayList<>(paths);
            all.addAll(other.paths);
            return new Line(all, key);
        }

        String text() {
            return "| " + keys() + " | " + say(needed()) + " | " + what() + " | "
                    + say(key.kind().allowed()) + " |\n";
        }

        /** The first in full, of those beside it the last step, of others that they are like it. */
        private String keys() {
            String first = paths.get(0);
            String section = first.substring(0, first.lastIndexOf('.') + 1);
            String beside = paths.stream()
                    .skip(1)
                    .filter(p -> p.substring(0, p.lastIndexOf('.') + 1).equals(section))
                    .map(p -> ", `" + p.substring(section.length()) + "`")
                    .collect(Collectors.joining());
            boolean more = paths.stream().anyMatch(p -> !p.startsWith(section));
            return "`" + first + "`" + beside + (more ? ", ..." : "");
        }

        private Said needed() {
            return key.need().when().isEmpty()
                    ? Said.NOTHING
                    : Tell.said(key.need().when());
        }

        private String what() {
            String usual = key.usual().isPresent() ? "; `" + shown(key) + "` if left out" : "";
            String also = key.synonyms().isEmpty() ? "" : ". Also understood: " + String.join(", ", key.synonyms());
            return say(key.help()) + usual + also;
        }

        private static <T> String shown(Key<T> key) {
            return key.usual().map(v -> Voice.plain().say(key.kind().shown(v))).orElse("");
        }

        private static String say(Said said) {
            return Voice.plain().say(said);
        }
    }
}
