package stretchwright.many;

import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;

/**
 * One thing that two makes have in different amounts, or only one of them has.
 *
 * @param unit "mm", "%", "cm2", "mmHg", "min", "years", "g/m2", "" for a plain number, or "words" for texts
 */
public record CompareRow(Part what, OptionalDouble a, OptionalDouble b, Part textA, Part textB, String unit) {
    private static final Part NONE = Part.text("-");

    static CompareRow words(Part what, Part a, Part b) {
        return new CompareRow(what, OptionalDouble.empty(), OptionalDouble.empty(), a, b, "words");
    }

    static CompareRow of(Part what, OptionalDouble a, OptionalDouble b, String unit) {
        return new CompareRow(what, a, b, Said.NOTHING, Said.NOTHING, unit);
    }

    private boolean isWords() {
        return unit.equals("words");
    }

    /** Whether it differs by more than what is shown of it. */
    boolean differs() {
        if (isWords()) {
            return !textA.equals(textB);
        }
        return a.isPresent() != b.isPresent()
                || (a.isPresent() && Math.abs(a.getAsDouble() - b.getAsDouble()) >= (unit.equals("cm2") ? 0.5 : 0.05));
    }

    Part shownA() {
        return isWords() ? textA : shown(a);
    }

    Part shownB() {
        return isWords() ? textB : shown(b);
    }

    private Part shown(OptionalDouble value) {
        return value.isEmpty() ? NONE : amount(value.getAsDouble(), false);
    }

    /** Signed, in mm and in the maker's own unit; told otherwise where only one has it. */
    Part change(Unit own) {
        if (a.isEmpty() || b.isEmpty()) {
            return isWords() ? Said.NOTHING : a.isPresent() ? Tell.said("compare.only-a") : Tell.said("compare.only-b");
        }
        double by = b.getAsDouble() - a.getAsDouble();
        Part mm = new Part.Length(by, Part.Told.MM, 1, true);
        return unit.equals("mm")
                ? own == Unit.MM ? mm : Tell.said("compare.both", mm, amount(by, true))
                : amount(by, true);
    }

    private Part amount(double value, boolean signed) {
        return switch (unit) {
            case "mm" -> new Part.Length(value, Part.Told.OWN, 1, signed);
            case "%" -> new Part.Share(value / 100, 1, signed);
            case "min" -> Tell.said("compare.minutes", number(value, 1, signed));
            case "years" -> Tell.said("compare.years", number(value, 1, signed));
            case "" -> number(value, 2, signed);
            default -> Part.text(text(value, unit.equals("cm2") ? 0 : 1, signed) + " " + unit);
        };
    }

    private static Part number(double value, int decimals, boolean signed) {
        return Part.text(text(value, decimals, signed));
    }

    /** Always so many decimals, so that they stand below each other. */
    private static String text(double value, int decimals, boolean signed) {
        return (signed && value > 0 ? "+" : "") + Voice.fixed(value, decimals);
    }
}
