package stretchwright.web.form;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.PrintKeys;

/**
 * One field of the form: a row of the table of keys at its place.
 *
 * @param key in full, as findings name it: "style.pockets.1.kind"
 */
public record Field(String key, Key<?> row) {
    /** Stands in the table for the unit of the make. */
    private static final String LENGTH = Unit.MM.symbol();

    public String id() {
        return id(key);
    }

    static String id(String key) {
        return key.replaceAll("[^a-z0-9]+", "-");
    }

    public Said label() {
        return row.label();
    }

    /** One line of help, and what is taken where the field is left empty. */
    public Said hint() {
        return row.path().equals(PrintKeys.FILES.path())
                ? Tell.said("field.hint-files", row.help())
                : usual(row)
                        .map(usual -> Tell.said("field.hint-usual", row.help(), usual))
                        .orElseGet(() -> Tell.said("field.hint", row.help()));
    }

    /** What is taken where nothing is chosen. */
    public Said nothing() {
        return usual(row).map(u -> Tell.said("field.usual", u)).orElseGet(() -> Tell.said("field.choose"));
    }

    private static <T> Optional<Part> usual(Key<T> row) {
        return row.usual().map(row.kind()::shown);
    }

    public Input input() {
        return row.kind().input();
    }

    public boolean isNeeded() {
        return row.need().always();
    }

    /** As it would be typed here. */
    public String example(Unit unit) {
        return Sample.typed(row, unit);
    }

    /** The words to choose from, or that may be written. */
    public List<String> options() {
        return row.kind().words();
    }

    public boolean isLength() {
        return row.kind().symbol().equals(LENGTH);
    }

    /** What goes behind a bare number; lengths have theirs by the file. */
    public String symbol() {
        return isLength() ? "" : row.kind().symbol();
    }
}
