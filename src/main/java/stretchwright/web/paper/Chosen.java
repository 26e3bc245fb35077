package stretchwright.web.paper;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.print.sheets.SheetMap;

/**
 * Which sheets are to be printed.
 *
 * @param first whether the page before them is: the map with its words and its square
 * @param sheets by their names, in the order of the map
 */
public record Chosen(boolean first, Set<String> sheets) {
    /** As it stands among the names of sheets. */
    static final String FIRST = "map";

    public Chosen {
        sheets = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(sheets));
    }

    static Chosen all(SheetMap map) {
        return new Chosen(true, names(map.sheets()));
    }

    /** By names as they were sent; those that the pattern does not have are left to {@link #unknown}. */
    static Chosen of(SheetMap map, Collection<String> names) {
        return new Chosen(
                names.contains(FIRST),
                names(map.sheets().stream()
                        .filter(s -> names.contains(s.name()))
                        .toList()));
    }

    /** Whether one of the names is no sheet of this pattern. */
    static boolean unknown(SheetMap map, Collection<String> names) {
        Set<String> all = names(map.sheets());
        return names.stream().anyMatch(n -> !n.equals(FIRST) && !all.contains(n));
    }

    /**
     * What is ticked when the page opens: what was asked for, or what is not printed as it is now, or all.
     *
     * @param only "all", "changed", the name of a piece, or nothing
     */
    static Chosen asked(SheetMap map, Printed printed, String only) {
        List<SheetMap.Sheet> changed =
                map.sheets().stream().filter(s -> !printed.holds(s)).toList();
        if (only.isEmpty() || only.equals("changed")) {
            return printed.isNone()
                            || changed.isEmpty()
                            || changed.size() == map.sheets().size()
                    ? all(map)
                    : new Chosen(false, names(changed));
        }
        List<SheetMap.Sheet> carry = map.sheets().stream()
                .filter(s -> s.pieces().stream().anyMatch(p -> PrintPage.word(p).equals(only)))
                .toList();
        return carry.isEmpty() ? all(map) : new Chosen(false, names(carry));
    }

    private static Set<String> names(Collection<SheetMap.Sheet> sheets) {
        return sheets.stream().map(SheetMap.Sheet::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    boolean isNothing() {
        return !first && sheets.isEmpty();
    }

    /** Pages of the whole file: the sheets stand behind its first ones. */
    SortedSet<Integer> pages(SheetMap map, int all) {
        int before = all - map.sheets().size();
        SortedSet<Integer> pages = new TreeSet<>();
        for (int i = 0; first && i < before; i++) {
            pages.add(i);
        }
        for (int i = 0; i < map.sheets().size(); i++) {
            if (sheets.contains(map.sheets().get(i).name())) {
                pages.add(before + i);
            }
        }
        return pages;
    }

    /** As an address has them. */
    String query() {
        return Stream.concat(first ? Stream.of(FIRST) : Stream.empty(), sheets.stream())
                .collect(Collectors.joining(","));
    }
}
