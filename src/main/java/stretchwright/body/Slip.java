package stretchwright.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/**
 * The likeliest slip behind a value that cannot be right: the one whose undoing brings it nearest to what the other
 * measures let expect.
 *
 * @param question the slip as a question to the wearer
 * @param undone the value if it was this slip, mm
 */
record Slip(Said question, double undone) {
    /** Undone, a slip must come within this many spreads of what was expected to be offered at all. */
    private static final double NEAR = 2.5;

    /** An inch that was written whole is one to this, in. */
    private static final double EXACT = 1e-3;

    /** The next long mark of a tape, mm. */
    private static final double MISREAD = 100;

    /**
     * The likeliest slip, given how many spreads off any value of this measure would be.
     *
     * @param unit in which the value was written
     */
    static Optional<Slip> behind(Measure measure, double mm, Unit unit, DoubleUnaryOperator off) {
        Slip best = null;
        double nearest = NEAR;
        for (Slip slip : possible(measure, mm, unit)) {
            double distance = Math.abs(off.applyAsDouble(slip.undone));
            if (slip.undone > 0 && distance < nearest) {
                best = slip;
                nearest = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<Slip> possible(Measure measure, double mm, Unit unit) {
        List<Slip> all = new ArrayList<>();
        all.add(new Slip(Tell.said("slip.inches-as-centimetres"), mm * 2.54));
        all.add(new Slip(Tell.said("slip.centimetres-as-inches"), mm / 2.54));
        all.add(new Slip(Tell.said("slip.ten-times-small"), mm * 10));
        all.add(new Slip(Tell.said("slip.ten-times-large"), mm / 10));
        if (measure.term().endsWith("girth")) {
            all.add(new Slip(Tell.said("slip.flat"), mm * 2));
            all.add(new Slip(Tell.said("slip.twice"), mm / 2));
        }
        for (double swapped : swapped(mm, unit)) {
            all.add(new Slip(Tell.said("slip.swapped", Part.length(swapped)), swapped));
        }
        all.add(new Slip(Tell.said("slip.misread", Part.length(MISREAD)), mm + MISREAD));
        all.add(new Slip(Tell.said("slip.misread", Part.length(MISREAD)), mm - MISREAD));
        return all;
    }

    /**
     * The value with two neighbouring digits swapped, mm, as it was written: in whole mm (the digits are the same in cm),
     * or in inches, of which the fraction stays.
     */
    static List<Double> swapped(double mm, Unit unit) {
        if (unit != Unit.IN) {
            return swapped(Math.rint(mm));
        }
        double inches = Unit.IN.fromMm(mm);
        double whole = Math.floor(inches + EXACT);
        return swapped(whole).stream()
                .map(other -> Unit.IN.toMm(other + inches - whole))
                .toList();
    }

    private static List<Double> swapped(double whole) {
        char[] digits = String.format(Locale.ROOT, "%.0f", whole).toCharArray();
        List<Double> all = new ArrayList<>();
        for (int i = 0; i + 1 < digits.length; i++) {
            if (digits[i] != digits[i + 1]) {
                char[] other = digits.clone();
                other[i] = digits[i + 1];
                other[i + 1] = digits[i];
                all.add(Double.parseDouble(new String(other)));
            }
        }
        return all;
    }
}
