package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalInt;
import stretchwright.ground.Part;

/** How the make is put on paper, from what was given. */
final class PrintReader {
    private PrintReader() {}

    static PrintTerms read(Given given) {
        Optional<Double> preview = given.get(PrintKeys.PREVIEW);
        PrintTerms terms = new PrintTerms(
                given.orUsual(PrintKeys.PAPER),
                Row.unboxed(given.get(PrintKeys.MARGIN)),
                Row.unboxed(given.get(PrintKeys.OVERLAP)),
                given.get(PrintKeys.GRID),
                preview.isPresent() ? OptionalInt.of(preview.get().intValue()) : OptionalInt.empty(),
                given.orUsual(PrintKeys.FILES));
        if (terms.sheet().isEmpty()) {
            given.add(PrintKeys.PRINT, Tell.said("print.tight", Part.text(terms.paper())), Tell.said("print.room"));
        }
        return terms;
    }
}
