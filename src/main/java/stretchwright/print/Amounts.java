package stretchwright.print;

import java.util.Locale;
import stretchwright.ground.Unit;

/** Numbers as people read them, the same in every country. */
public final class Amounts {
    /** Cloth is sold by the eighth of a yard in the US: 114.3 mm (trade-values section 10). */
    private static final double EIGHTH_OF_A_YARD = 914.4 / 8;

    private Amounts() {}

    /** Up to so many decimals, without idle zeros. */
    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        String bare = text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
        return bare.equals("-0") ? "0" : bare;
    }

    static String mm(double mm) {
        return number(mm, 1) + " mm";
    }

    /** A share as percent: 0.107 is "10.7 %". */
    static String percent(double share) {
        return number(share * 100, 1) + " %";
    }

    /** In the maker's own unit; yards and metres with two decimals, inches too. */
    static String length(double mm, Unit unit) {
        int decimals = unit == Unit.MM ? 0 : unit == Unit.CM ? 1 : 2;
        return number(unit.fromMm(mm), decimals) + " " + unit.symbol();
    }

    /** As a shop cuts it: "1.35 m or 1 1/2 yd". */
    public static String toBuy(double mm) {
        return number(mm / 1000, 2) + " m or " + yards(mm);
    }

    /** In yards, rounded up to the next eighth. */
    static String yards(double mm) {
        int eighths = (int) Math.ceil(mm / EIGHTH_OF_A_YARD - 1e-9);
        int whole = eighths / 8;
        int rest = eighths % 8;
        String part = switch (rest) {
            case 0 -> "";
            case 4 -> "1/2";
            case 2, 6 -> rest / 2 + "/4";
            default -> rest + "/8";
        };
        String number = whole == 0 && !part.isEmpty() ? part : part.isEmpty() ? "" + whole : whole + " " + part;
        return number + " yd";
    }
}
