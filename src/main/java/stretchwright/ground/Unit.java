package stretchwright.ground;

import java.util.Locale;
import java.util.Optional;

/** A unit of length, with its size in mm (inch: 25.4 mm exactly, yard 914.4 mm, international agreement of 1959). */
public enum Unit {
    MM("mm", 1),
    CM("cm", 10),
    M("m", 1000),
    IN("in", 25.4),
    YD("yd", 914.4);

    private final String symbol;
    private final double millimetres;

    Unit(String symbol, double millimetres) {
        this.symbol = symbol;
        this.millimetres = millimetres;
    }

    public String symbol() {
        return symbol;
    }

    /** Its name in a sentence: "a number in inches". */
    public Said said() {
        return Said.of("ground", "unit." + symbol);
    }

    public double toMm(double value) {
        return value * millimetres;
    }

    public double fromMm(double mm) {
        return mm / millimetres;
    }

    public static Optional<Unit> of(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> Optional.of(MM);
            case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> Optional.of(CM);
            case "m", "metre", "metres", "meter", "meters" -> Optional.of(M);
            case "in", "inch", "inches", "\"", "\u2033", "''" -> Optional.of(IN);
            case "yd", "yds", "yard", "yards" -> Optional.of(YD);
            default -> Optional.empty();
        };
    }
}
