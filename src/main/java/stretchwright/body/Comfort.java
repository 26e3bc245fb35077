package stretchwright.body;

import java.util.OptionalDouble;

/**
 * What pressure the body bears, mmHg; suggested limits of trade-values section 2.3, which gives their sources. They are
 * cautions for clothes and no medical advice.
 */
public final class Comfort {
    /** Comfortable for daily wear up to about here (9.8 mmHg, 1.3 kPa). */
    public static final double NOTE = 10;

    /** Critical for casual wear beyond here (15 mmHg, 2.0 kPa). */
    public static final double CAUTION = 15;

    /** From here on the range of medical compression classes. */
    public static final double DEVICE = 18;

    /** Largest recommended for sportswear (24.8 mmHg, 3.3 kPa). */
    public static final double STOP = 25;

    /** A waistband of a wearer of unknown age: comfortable at 17.5, standard deviation 2.1 (Sen'i Gakkaishi 47, 1991). */
    public static final double CAUTION_BAND = 20;

    /** What was borne at the waist fell with age: 32.37 - 0.287 mmHg a year (124 women of 19 to 87; abstract). */
    private static final double BORNE_AT_BIRTH = 32.37;

    private static final double LESS_A_YEAR = 0.287;
    private static final double YOUNGEST = 19;
    private static final double OLDEST = 87;

    /** A waistband: uncomfortable beyond (same). */
    public static final double STOP_BAND = 35;

    /** From this chance of being over its limit on a pressure is told: as a note, a caution, a stop (common practice, no source). */
    public static final double NOTE_CHANCE = 0.1;

    public static final double CAUTION_CHANCE = 0.3;

    public static final double STOP_CHANCE = 0.5;

    /** So many log spreads below its limit a draft stays, that it be no caution: Phi(-0.5244) = 0.3, and a little for rounding. */
    public static final double PLANNED_SPREADS = 0.55;

    /** Under this pressure nothing is felt (3 mmHg, 0.4 kPa). */
    public static final double NEGLIGIBLE = 3;

    /** A waistband's caution at an age; of children and where no age is known {@link #CAUTION_BAND}. */
    public static double band(OptionalDouble age) {
        return age.isPresent() && age.getAsDouble() >= YOUNGEST
                ? BORNE_AT_BIRTH - LESS_A_YEAR * Math.min(OLDEST, age.getAsDouble())
                : CAUTION_BAND;
    }

    private Comfort() {}
}
