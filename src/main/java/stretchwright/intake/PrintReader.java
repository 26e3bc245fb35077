package stretchwright.intake;

import java.util.List;
import java.util.Set;
import stretchwright.print.kit.FileGroup;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.print.kit.Paper;
import stretchwright.print.sheets.TraceGrid;

/** Reads how the make is put on paper. */
final class PrintReader {
    static final String SECTION = "print";
    private static final String FILES = "files";

    private static final List<String> KEYS = List.of("paper", "margin", "overlap", "grid", "preview", FILES);
    private static final Pattern DPI = Pattern.compile("(\\d{1,6})\\s*dpi");
    /** Coarser shows nothing; a finer picture of a whole pattern would take more memory than a desk has to spare. */
    private static final int COARSEST = 10;

    private static final int FINEST = 72;

    private PrintReader() {}

    static PrintTerms read(Section top) {
        Optional<Section> section = top.section(SECTION, KEYS);
        Optional<String> paper = section.flatMap(s -> known(
                s,
                "paper",
                word -> Paper.of(word).isPresent(),
                "Choose A4, A3, Letter, Tabloid, a size such as 330 x 483 mm, or a roll by its width: roll 914 mm."));
        Optional<String> grid = section.flatMap(
                s -> known(s, "grid", word -> TraceGrid.of(word).isPresent(), "Choose 1 in, 1 cm, 2 cm or 5 cm."));
        PrintTerms terms = new PrintTerms(
                paper.orElse("A4"),
                section.map(s -> s.length("margin", Limits.PRINT_MARGIN)).orElse(OptionalDouble.empty()),
                section.map(s -> s.length("overlap", Limits.PRINT_OVERLAP)).orElse(OptionalDouble.empty()),
                grid,
                section.map(PrintReader::preview).orElse(OptionalInt.empty()),
                section.map(PrintReader::files).orElse(FileGroup.usual()));
        if (terms.sheet().isEmpty()) {
            top.add(
                    SECTION,
                    "margin and overlap leave too little of " + terms.paper() + ".",
                    "The test squares of 102 mm must fit between; take less of either, or larger paper.");
        }
        return terms;
    }

    private static OptionalInt preview(Section s) {
        Optional<String> words = s.text("preview");
        if (words.isEmpty()) {
            return OptionalInt.empty();
        }
        Matcher dpi = DPI.matcher(words.get());
        int points = dpi.matches() ? Integer.parseInt(dpi.group(1)) : 0;
        if (points < COARSEST || points > FINEST) {
            s.add(
                    "preview",
                    Echo.quoted(words.get()) + " is no fineness of a picture.",
                    "Write " + COARSEST + " to " + FINEST + " dpi, such as: 50 dpi");
            return OptionalInt.empty();
        }
        return OptionalInt.of(points);
    }

    /** One group or a list of them; what is usual where none is named. */
    private static Set<FileGroup> files(Section s) {
        if (!s.has(FILES)) {
            return FileGroup.usual();
        }
        List<String> words = s.texts(FILES, "[pattern, lay]");
        if (words.isEmpty() && !s.isValue(FILES)) {
            s.add(FILES, "names nothing.", "Write for example: files: [pattern, lay], or leave it out.");
        }
        return PrintTerms.files(words, (problem, remedy) -> s.add(FILES, problem, remedy));
    }

    private static Optional<String> known(Section s, String key, Predicate<String> is, String remedy) {
        Optional<String> word = s.text(key);
        if (word.isPresent() && !is.test(word.get())) {
            s.add(key, Echo.quoted(word.get()) + " is not a " + key + " that is known here.", remedy);
            return Optional.empty();
        }
        return word;
    }
}
