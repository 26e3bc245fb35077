package stretchwright.body;

import stretchwright.ground.Chance;

/**
 * By what share a whole girth grows in a pose. The skin of seat and knee grows by 15 to 28 % ({@link SkinExtension}), but only at
 * the place: elsewhere round the same girth it does not, and cloth that slides shares it out.
 *
 * <p>Squatting: hip 8 % (4 to 12 in 8 of 10: hip breadth grows by 7 to 12 % sitting, ANSUR 1988, an upper bound, and the back
 * "changes little" crosswise, J Home Econ Japan 47:169, abstract); knee the same (common practice, no source). Other poses grow by
 * as much more or less as their skin does (derived).
 */
public final class GirthGrowth {
    public static final double SQUAT = 0.08;

    private static final String SQUATTING = "deep knee bend";

    /** One standard deviation: 4 to 12 % hold 8 in 10. */
    public static final double SPREAD = 0.04 / Chance.EIGHT_IN_TEN;

    /** Along, of what the skin grows: 14 to 30 % about 22 hold 8 in 10 at the back rise. */
    private static final double ALONG_SPREAD = 0.28;

    private GirthGrowth() {}

    /** Across. */
    public static double of(SkinExtension e) {
        return SQUAT * share(e);
    }

    /** One standard deviation of it. */
    public static double spread(SkinExtension e) {
        return SPREAD * share(e);
    }

    /** One standard deviation of what a pose asks along. */
    public static double spreadAlong(double growth) {
        return ALONG_SPREAD * growth;
    }

    private static double share(SkinExtension e) {
        return e.across()
                / SkinExtension.table().stream()
                        .filter(s -> s.region() == e.region() && s.pose().equals(SQUATTING))
                        .findFirst()
                        .orElseThrow()
                        .across();
    }
}
