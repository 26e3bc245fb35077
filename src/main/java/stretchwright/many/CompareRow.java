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

    /** Signed; told otherwise where only one has it. */
    Part change() {
        if (a.isEmpty() || b.isEmpty()) {
            return isWords() ? Said.NOTHING : a.isPresent() ? Tell.said("compare.only-a") : Tell.said("compare.only-b");
        }
        double by = b.getAsDouble() - a.getAsDouble();
        return amount(by, true);
    }

    /** Whether people who measure in this unit see no difference: lengths that agree to half of the least they are told. */
    boolean looksAlike(Unit own) {
        return unit.equals("mm")
                && a.isPresent()
                && b.isPresent()
                && Math.abs(b.getAsDouble() - a.getAsDouble()) < own.toMm(own == Unit.IN ? 1.0 / 32 : 0.05);
    }

    private Part amount(double value, boolean signed) {
        return switch (unit) {
            case "mm" -> new Part.Length(value, Part.Told.OWN, 1, signed);
            case "%" -> new Part.Share(value / 100, 1, signed);
            case "min" -> Tell.said("compare.minutes", number(value, 1, signed));
            case "years" -> Tell.said("compare.years", number(value, decimals(1), signed));
            case "" -> number(value, decimals(2), signed);
            default -> Part.text(text(value, unit.equals("cm2") ? 0 : 1, signed) + " " + unit);
        };
    }

    /** None where both are whole: counts. */
    private int decimals(int most) {
        return whole(a) && whole(b) ? 0 : most;
    }

    private static boolean whole(OptionalDouble value) {
        return value.isEmpty() || value.getAsDouble() == Math.rint(value.getAsDouble());
    }

    private static Part number(double value, int decimals, boolean signed) {
        return Part.text(text(value, decimals, signed));
    }

    /** Always so many decimals, so that they stand below each other. */
    private static String text(double value, int decimals, boolean signed) {
        return (signed && value > 0 ? "+" : "") + Voice.fixed(value, decimals);
    }
}
