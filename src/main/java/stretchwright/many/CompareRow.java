package stretchwright.many;

import java.util.Locale;
import java.util.OptionalDouble;
import stretchwright.ground.Unit;

/**
 * One thing that two makes have in different amounts, or only one of them has.
 *
 * @param unit "mm", "%", "cm2", "mmHg", "min", "years", "g/m2", "" for a plain number, or "words" for texts
 */
public record CompareRow(String what, OptionalDouble a, OptionalDouble b, String textA, String textB, String unit) {
    static CompareRow words(String what, String a, String b) {
        return new CompareRow(what, OptionalDouble.empty(), OptionalDouble.empty(), a, b, "words");
    }

    static CompareRow of(String what, OptionalDouble a, OptionalDouble b, String unit) {
        return new CompareRow(what, a, b, "", "", unit);
    }

    /** Whether it differs by more than what is shown of it. */
    boolean differs() {
        if (unit.equals("words")) {
            return !textA.equals(textB);
        }
        return a.isPresent() != b.isPresent()
                || (a.isPresent() && Math.abs(a.getAsDouble() - b.getAsDouble()) >= (unit.equals("cm2") ? 0.5 : 0.05));
    }

    String shownA(Unit own) {
        return unit.equals("words") ? textA : shown(a, own);
    }

    String shownB(Unit own) {
        return unit.equals("words") ? textB : shown(b, own);
    }

    private String shown(OptionalDouble value, Unit own) {
        return value.isEmpty() ? "-" : amount(value.getAsDouble(), own, false);
    }

    /** Signed, in mm and in the maker's own unit; empty where only one has it. */
    String change(Unit own) {
        if (a.isEmpty() || b.isEmpty()) {
            return unit.equals("words") ? "" : a.isPresent() ? "only in A" : "only in B";
        }
        double by = b.getAsDouble() - a.getAsDouble();
        String first = unit.equals("mm") ? String.format(Locale.ROOT, "%+.1f mm", by) : amount(by, own, true);
        return unit.equals("mm") && own != Unit.MM
                ? first + String.format(Locale.ROOT, ", %+.2f %s", own.fromMm(by), own.symbol())
                : first;
    }

    private String amount(double value, Unit own, boolean signed) {
        return switch (unit) {
            case "mm" -> number(own.fromMm(value), own == Unit.MM ? 1 : 2, signed) + " " + own.symbol();
            case "cm2" -> number(value, 0, signed) + " cm2";
            case "" -> number(value, 2, signed);
            default -> number(value, 1, signed) + " " + unit;
        };
    }

    private static String number(double value, int decimals, boolean signed) {
        String plain = String.format(Locale.ROOT, decimals == 0 ? "%.0f" : decimals == 1 ? "%.1f" : "%.2f", value);
        return signed && !plain.startsWith("-") ? "+" + plain : plain;
    }
}
