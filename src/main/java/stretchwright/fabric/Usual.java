package stretchwright.fabric;

import java.util.OptionalDouble;

/**
 * What of a cloth that nobody has yet was taken as usual. A pattern for it is good enough for a test pair, and no proof that any
 * cloth will do.
 *
 * @param width the usable width
 * @param across the stretch across, at an easy pull
 * @param along the stretch along
 */
public record Usual(boolean width, boolean across, boolean along) {
    public static final Usual NOTHING = new Usual(false, false, false);

    /** Share. The upper end of what a thread maker's leaflet calls functional, 30 to 50 % (trade values 1.1). */
    public static final double ACROSS = 0.50;

    /** Share. The lower end of knits with elastane, 40 to 80 % (trade values 1.2; common practice, no source). */
    public static final double ALONG = 0.40;

    /** mm: between the 58 and 60 in, 1473 and 1524 mm, by which knits are sold (trade values 1.2). */
    private static final double ROLL = 1500;

    /** mm at each selvage, pin holes and glue, 20 to 25 (trade values 1.2; common practice, no source). */
    private static final double SELVAGE = 25;

    /** Usable width between strips as wide as given, or else as usual. */
    public static double usableWidth(OptionalDouble selvage) {
        return ROLL - 2 * selvage.orElse(SELVAGE);
    }

    /** Whether the pattern itself rests on it, and not only the lay. */
    public boolean stretch() {
        return across || along;
    }

    public boolean any() {
        return width || stretch();
    }

    Usual turned() {
        return new Usual(width, along, across);
    }

    /** Where the usable width was found meanwhile, if it was. */
    Usual with(boolean sameWidth) {
        return new Usual(width && sameWidth, across, along);
    }

    /** Where a stretch was found meanwhile, if it was. */
    Usual with(boolean sameAcross, boolean sameAlong) {
        return new Usual(width, across && sameAcross, along && sameAlong);
    }
}
