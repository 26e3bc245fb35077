package stretchwright.body;

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

    /** A waistband: comfortable at 17.5, standard deviation 2.1 (Sen'i Gakkaishi 47, 1991). */
    public static final double CAUTION_BAND = 20;

    /** A waistband: uncomfortable beyond (same). */
    public static final double STOP_BAND = 35;

    /** Under this pressure nothing is felt (3 mmHg, 0.4 kPa). */
    public static final double NEGLIGIBLE = 3;

    private Comfort() {}
}
