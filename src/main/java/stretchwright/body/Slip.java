package stretchwright.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

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

    /** The next long mark of a tape, mm. */
    private static final double MISREAD = 100;

    /** The likeliest slip, given how many spreads off any value of this measure would be. */
    static Optional<Slip> behind(Measure measure, double mm, DoubleUnaryOperator off) {
        Slip best = null;
        double nearest = NEAR;
        for (Slip slip : possible(measure, mm)) {
            double distance = Math.abs(off.applyAsDouble(slip.undone));
            if (slip.undone > 0 && distance < nearest) {
                best = slip;
                nearest = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<Slip> possible(Measure measure, double mm) {
        List<Slip> all = new ArrayList<>();
        all.add(new Slip(Tell.said("slip.inches-as-centimetres"), mm * 2.54));
        all.add(new Slip(Tell.said("slip.centimetres-as-inches"), mm / 2.54));
        all.add(new Slip(Tell.said("slip.ten-times-small"), mm * 10));
        all.add(new Slip(Tell.said("slip.ten-times-large"), mm / 10));
        if (measure.term().endsWith("girth")) {
            all.add(new Slip(Tell.said("slip.flat"), mm * 2));
            all.add(new Slip(Tell.said("slip.twice"), mm / 2));
        }
        for (double swapped : swapped(mm)) {
            all.add(new Slip(Tell.said("slip.swapped", Part.length(swapped)), swapped));
        }
        all.add(new Slip(Tell.said("slip.misread", Part.length(MISREAD)), mm + MISREAD));
        all.add(new Slip(Tell.said("slip.misread", Part.length(MISREAD)), mm - MISREAD));
        return all;
    }

    /** The value in whole mm with two neighbouring digits swapped (the digits are the same in cm). */
    static List<Double> swapped(double mm) {
        char[] digits = String.format(Locale.ROOT, "%.0f", mm).toCharArray();
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
