package stretchwright.print.kit;

import stretchwright.ground.Decimals;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Buying;
import stretchwright.lay.Shop;

/** Numbers as people read them on paper; how a length is worded, {@link Voice} knows. */
public final class Amounts {
    private static final int EIGHTHS = 8;

    private Amounts() {}

    /** Up to so many decimals, without idle zeros. */
    public static String number(double value, int decimals) {
        return Decimals.upTo(value, decimals);
    }

    public static String mm(double mm) {
        return Voice.plain().say(Part.sewn(mm));
    }

    /** Without decimals, where a tenth would tell nothing. */
    public static String wholeMm(double mm) {
        return Voice.plain().say(Part.millimetres(mm, 0));
    }

    /** A share as percent: 0.107 is "10.7 %". */
    public static String percent(double share) {
        return Voice.plain().say(Said.of("ground", "share", Part.number(100 * share, 1)));
    }

    /** In the maker's own unit, without idle zeros; inches as a tape reads them. */
    public static String length(double mm, Unit unit) {
        return Voice.of(unit).say(own(mm, unit));
    }

    /** The same without the unit, where one word says it for all. */
    public static String bare(double mm, Unit unit) {
        return Voice.of(unit).bare(own(mm, unit));
    }

    private static Part.Length own(double mm, Unit unit) {
        return new Part.Length(mm, Part.Told.WRITTEN, unit == Unit.MM ? 0 : 1, false);
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
        return Voice.parts((long) Shop.eighths(mm), EIGHTHS) + " " + Unit.YD.symbol();
    }

    /** To be sewn or cut by: in mm, for makers in inches with what an inch ruler shows behind it. */
    public static String sewn(double mm, Unit unit) {
        return Voice.of(unit).say(Part.sewn(mm));
    }
}
