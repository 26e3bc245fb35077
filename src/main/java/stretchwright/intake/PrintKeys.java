package stretchwright.intake;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.Said;
import stretchwright.print.kit.FileGroup;
import stretchwright.print.kit.Paper;
import stretchwright.print.sheets.TraceGrid;

/** Rows of the print: how the make is put on paper. */
public final class PrintKeys {
    private static final Pattern DPI = Pattern.compile("(-?\\d{1,6})\\s*dpi");
    private static final List<String> GRIDS = List.of("1 in", "1 cm", "2 cm", "5 cm");

    static final Key<Boolean> PRINT = Row.section("print", "{paper: A4}");

    public static final Key<String> PAPER = Key.of(
                    "print.paper",
                    new KnownKind(
                            word -> Paper.of(word).isPresent(),
                            "paper.is-not",
                            "paper.write",
                            List.of("A4", "A3", "A2", "A1", "A0", "Letter", "Tabloid", "roll 914 mm"),
                            Schemas.text()),
                    "A4")
            .usually("A4")
            .in(of(p -> Optional.of(p.paper())));

    public static final Key<Double> MARGIN =
            Row.length("print.margin", 3, 50, "why.margin", 3, 30, "6 mm").in(of(p -> Row.boxed(p.margin())));

    public static final Key<Double> OVERLAP =
            Row.length("print.overlap", 0, 40, "why.overlap", 3, 30, "10 mm").in(of(p -> Row.boxed(p.overlap())));

    public static final Key<String> GRID = Key.of(
                    "print.grid",
                    new KnownKind(
                            word -> TraceGrid.of(word).isPresent(),
                            "grid.is-not",
                            "grid.write",
                            GRIDS,
                            Schemas.words(GRIDS)),
                    "2 cm")
            .in(of(PrintTerms::grid));

    /** Coarser shows nothing; a finer picture of a whole pattern would take more memory than a desk has to spare. */
    public static final Key<Double> PREVIEW = Key.of(
                    "print.preview",
                    new QuantityKind(
                                    PrintKeys::dpi,
                                    new Range(10, 72, "why.preview"),
                                    "dpi",
                                    "preview.is-not",
                                    "preview.write")
                            .only("^[0-9]{1,6} ?dpi$"),
                    "50 dpi")
            .in(of(p -> dpi(p.preview())));

    public static final Key<Set<FileGroup>> FILES = Key.of("print.files", new FilesKind(), "[pattern, lay]")
            .usually(FileGroup.usual())
            .in(of(p -> Optional.of(p.files())));

    private PrintKeys() {}

    static List<Key<?>> rows() {
        return List.of(PRINT, PAPER, MARGIN, OVERLAP, GRID, PREVIEW, FILES);
    }

    private static <T> Lens<T> of(Function<PrintTerms, Optional<T>> get) {
        return Lens.reading(m -> get.apply(m.print()));
    }

    private static Optional<Double> dpi(OptionalInt points) {
        return points.isPresent() ? Optional.of((double) points.getAsInt()) : Optional.empty();
    }

    private static OptionalDouble dpi(String text) {
        Matcher dpi = DPI.matcher(text);
        return dpi.matches() ? OptionalDouble.of(Integer.parseInt(dpi.group(1))) : OptionalDouble.empty();
    }

    /**
     * The groups that words name; blanks around them do no harm.
     *
     * @param wrong told what is wrong with a word, or with none at all, and what would be right
     */
    public static Set<FileGroup> files(List<String> words, BiConsumer<Said, Said> wrong) {
        Set<FileGroup> groups = EnumSet.noneOf(FileGroup.class);
        List<String> named =
                words.stream().map(String::strip).filter(w -> !w.isEmpty()).toList();
        if (named.isEmpty()) {
            wrong.accept(FilesKind.namesNothing(), FilesKind.choose(""));
        }
        for (String word : named) {
            Optional<FileGroup> group = FileGroup.of(word);
            if (word.equals(FileGroup.ALL)) {
                groups.addAll(FileGroup.all());
            } else if (group.isPresent()) {
                groups.add(group.get());
            } else {
                wrong.accept(FilesKind.isNot(word), FilesKind.choose(word));
            }
        }
        return groups;
    }
}
