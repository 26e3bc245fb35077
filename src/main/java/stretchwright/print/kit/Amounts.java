package stretchwright.print.kit;

import stretchwright.ground.Decimals;
import stretchwright.ground.Unit;
import stretchwright.lay.Buying;
import stretchwright.lay.Shop;

/** Numbers as people read them, the same in every country. */
public final class Amounts {
    private Amounts() {}

    /** Up to so many decimals, without idle zeros. */
    public static String number(double value, int decimals) {
        return Decimals.upTo(value, decimals);
    }

    /** "1 garment", "3 garments". */
    public static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    public static String mm(double mm) {
        return number(mm, 1) + " mm";
    }

    /** Without decimals, where a tenth would tell nothing. */
    public static String wholeMm(double mm) {
        return number(mm, 0) + " mm";
    }

    /** A share as percent: 0.107 is "10.7 %". */
    public static String percent(double share) {
        return number(share * 100, 1) + " %";
    }

    /** In the maker's own unit; yards and metres with two decimals, inches too. */
    public static String length(double mm, Unit unit) {
        return bare(mm, unit) + " " + unit.symbol();
    }

    /** The same without the unit, where one word says it for all. */
    public static String bare(double mm, Unit unit) {
        return number(unit.fromMm(mm), unit == Unit.MM ? 0 : unit == Unit.CM ? 1 : 2);
    }

    /** As a shop cuts it, each rounded up from what is needed, the maker's own first: "1.35 m or 1 1/2 yd". */
    public static String toBuy(Buying buying) {
        String metres = number(Shop.metric(buying.needed()) / 1000, 2) + " m";
        String yards = yards(buying.needed());
        return buying.counter() == Buying.Counter.YARDS
                ? Phrases.of("amount.or", yards, metres)
                : Phrases.of("amount.or", metres, yards);
    }

    /** Only as the maker's own shop cuts it. */
    public static String bought(Buying buying) {
        return buying.counter() == Buying.Counter.YARDS
                ? yards(buying.bought())
                : number(buying.bought() / 1000, 2) + " m";
    }

    /** In yards, rounded up to the next eighth. */
    static String yards(double mm) {
        return fraction((long) Shop.eighths(mm), 8) + " yd";
    }

    /** In inches as a ruler has them, to the nearest sixteenth: 7 mm is "1/4 in" (by 0.65 mm). */
    public static String ruler(double mm) {
        return fraction(Math.round(mm / 25.4 * 16), 16) + " in";
    }

    /** To be sewn or cut by: in mm, for makers in inches with what an inch ruler shows behind it. */
    public static String sewn(double mm, Unit unit) {
        return unit == Unit.IN ? mm(mm) + " (" + ruler(mm) + ")" : mm(mm);
    }

    /** So many parts of a whole, shortened: 111 of 8 are "13 7/8". Parts of a power of two. */
    public static String fraction(long count, int parts) {
        long whole = count / parts;
        long rest = count % parts;
        if (rest == 0) {
            return Long.toString(whole);
        }
        long common = Long.lowestOneBit(rest);
        String part = rest / common + "/" + parts / common;
        return whole == 0 ? part : whole + " " + part;
    }
}
