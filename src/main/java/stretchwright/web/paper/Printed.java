package stretchwright.web.paper;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.print.sheets.SheetMap;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Remembered;

/**
 * What was on the sheets of a make when they were printed last.
 *
 * @param marks by the names of the sheets
 */
public record Printed(Map<String, String> marks) {
    public Printed {
        marks = Map.copyOf(marks);
    }

    static Printed of(Bench bench, Opened make) {
        return make.demo()
                ? new Printed(Map.of())
                : of(Remembered.of(bench.room().store(), make.stored().thing(), Remembered.PRINTED)
                        .orElse(""));
    }

    /** As it is remembered: "A1 0123456789abcdef", a line for each sheet; other lines say nothing. */
    static Printed of(String text) {
        return new Printed(text.lines()
                .map(l -> l.split(" ", 2))
                .filter(l -> l.length == 2)
                .collect(Collectors.toMap(l -> l[0], l -> l[1], (one, other) -> other)));
    }

    /** These sheets are printed as they are now. */
    static void remember(Bench bench, Opened make, SheetMap map, Set<String> sheets) {
        if (!make.demo()) {
            Remembered.update(
                    bench.room().store(),
                    make.stored().thing(),
                    Remembered.PRINTED,
                    before -> of(before).with(map, sheets).text());
        }
    }

    private Printed with(SheetMap map, Set<String> sheets) {
        Map<String, String> all = new LinkedHashMap<>();
        for (SheetMap.Sheet s : map.sheets()) {
            String before = marks.getOrDefault(s.name(), "");
            String now = sheets.contains(s.name()) ? s.mark() : before;
            if (!now.isEmpty()) {
                all.put(s.name(), now);
            }
        }
        return new Printed(all);
    }

    private String text() {
        return marks.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining("\n"));
    }

    boolean isNone() {
        return marks.isEmpty();
    }

    /** Whether the sheet was printed as it is now. */
    boolean holds(SheetMap.Sheet sheet) {
        return sheet.mark().equals(marks.get(sheet.name()));
    }
}
