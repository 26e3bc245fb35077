package stretchwright.body;

import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/** What this room tells: keys of body/words.properties with what fills their gaps. */
final class Tell {
    /** Larger ones are told as powers of ten, mm. */
    private static final double LARGEST = 1e9;

    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("body", key, parts);
    }

    /** A length as it was taken: in whole mm where it is one (but for rounding), else to a tenth. */
    static Part taken(double mm) {
        if (!(Math.abs(mm) < LARGEST)) {
            return Part.text(mm + " " + Unit.MM.symbol());
        }
        return Part.length(mm, Math.abs(mm - Math.rint(mm)) < 0.05 ? 0 : 1);
    }

    /** Where a value lies in nineteen of twenty: two spreads to either side. */
    static Part range(double middle, double spread) {
        return Part.span(middle - 2 * spread, middle + 2 * spread);
    }
}
