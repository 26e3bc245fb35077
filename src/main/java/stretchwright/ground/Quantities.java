package stretchwright.ground;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them - "74.2", "13 1/2 in", "60 %", "3.1 N", "260 g/m2" - into millimetres,
 * shares, newtons and grams per square metre. An empty answer means "not such a quantity"; the caller makes the
 * finding.
 */
public final class Quantities {
    private static final Pattern NUMBER = Pattern.compile(
            "\\s*([+-]?)\\s*(?:(\\d+)\\s+(\\d+)\\s*/\\s*(\\d+)|(\\d+)\\s*/\\s*(\\d+)|(\\d*[.,]?\\d+(?:[eE][+-]?\\d+)?|\\d+[.,]))"
                    + "\\s*(.*?)\\s*");

    /** What a gram weighs: standard gravity, 9.80665 m/s2. */
    public static final double NEWTONS_PER_GRAM = 0.00980665;

    private Quantities() {}

    /** A number and the unit text behind it. */
    private record Reading(double value, String unit) {}

    /** A length in mm; bare numbers are in the given unit. */
    public static OptionalDouble length(String text, Unit bare) {
        Reading reading = read(text);
        if (reading == null) {
            return OptionalDouble.empty();
        }
        if (reading.unit.isEmpty()) {
            return OptionalDouble.of(bare.toMm(reading.value));
        }
        return Unit.of(reading.unit)
                .map(unit -> OptionalDouble.of(unit.toMm(reading.value)))
                .orElse(OptionalDouble.empty());
    }

    /** A share: "60 %" is 0.6; a bare number is refused, because 0.6 and 60 would both be guesses. 0 needs no sign. */
    public static OptionalDouble share(String text) {
        Reading reading = read(text);
        if (reading == null || !(reading.unit.equals("%") || (reading.unit.isEmpty() && reading.value == 0))) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(reading.value / 100);
    }

    /** A force in N: "3.1 N" or "310 g" (grams-force: household weights on a hook). */
    public static OptionalDouble force(String text) {
        Reading reading = read(text);
        if (reading == null) {
            return OptionalDouble.empty();
        }
        return switch (reading.unit.toLowerCase(Locale.ROOT)) {
            case "n" -> OptionalDouble.of(reading.value);
            case "g", "gf" -> OptionalDouble.of(reading.value * NEWTONS_PER_GRAM);
            case "kg", "kgf" -> OptionalDouble.of(reading.value * 1000 * NEWTONS_PER_GRAM);
            default -> OptionalDouble.empty();
        };
    }

    /** A pressure in mmHg; "1 kPa" is 7.5006 mmHg. */
    public static OptionalDouble pressure(String text) {
        Reading reading = read(text);
        if (reading == null) {
            return OptionalDouble.empty();
        }
        return switch (reading.unit.toLowerCase(Locale.ROOT)) {
            case "mmhg" -> OptionalDouble.of(reading.value);
            case "kpa" -> OptionalDouble.of(reading.value * 1000 / 133.322);
            default -> OptionalDouble.empty();
        };
    }

    /** A weight of cloth in g/m2; "oz/yd2" is 33.9057 g/m2. */
    public static OptionalDouble clothWeight(String text) {
        Reading reading = read(text);
        if (reading == null) {
            return OptionalDouble.empty();
        }
        return switch (reading.unit.toLowerCase(Locale.ROOT).replace(" ", "").replace("\u00b2", "2")) {
            case "g/m2", "gsm", "" -> OptionalDouble.of(reading.value);
            case "oz/yd2" -> OptionalDouble.of(reading.value * 28.349523125 / (0.9144 * 0.9144));
            default -> OptionalDouble.empty();
        };
    }

    /** A plain number. */
    public static OptionalDouble number(String text) {
        Reading reading = read(text);
        return reading == null || !reading.unit.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(reading.value);
    }

    /** The signs of one letter for parts of a whole; those of halves, quarters and eighths are on every tape in inches. */
    private static final String FRACTIONS = "\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e\u2153\u2154";

    private static final List<String> PARTS = List.of("1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3");

    /** "30\u00bc" is "30 1/4"; the marks that word processors make of " are inch marks too. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : text.toCharArray()) {
            int part = FRACTIONS.indexOf(c);
            if (part >= 0) {
                out.append(' ').append(PARTS.get(part));
            } else {
                out.append(c == '\u2044' ? '/' : c == '\u201d' || c == '\u201c' ? '"' : c);
            }
        }
        return out.toString();
    }

    private static @org.jspecify.annotations.Nullable Reading read(String text) {
        if (text.length() > 60) {
            return null;
        }
        Matcher m = NUMBER.matcher(plain(text));
        if (!m.matches()) {
            return null;
        }
        double value;
        if (m.group(2) != null) {
            if (fraction(m.group(3), m.group(4)) >= 1) {
                return null;
            }
            value = Double.parseDouble(m.group(2)) + fraction(m.group(3), m.group(4));
        } else if (m.group(5) != null) {
            value = fraction(m.group(5), m.group(6));
        } else {
            value = Double.parseDouble(m.group(7).replace(',', '.'));
        }
        if (!Double.isFinite(value)) {
            return null;
        }
        return new Reading(m.group(1).equals("-") ? -value : value, m.group(8));
    }

    private static double fraction(String top, String bottom) {
        return Double.parseDouble(top) / Double.parseDouble(bottom);
    }
}
