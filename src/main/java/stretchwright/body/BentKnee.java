package stretchwright.body;

/**
 * By how much the front of the leg lengthens when the knee bends deeply: 40 % over 200 mm of the knee's front, on a
 * knee of 365 mm; other knees in proportion. Derived from Kirk and Ibrahim (Textile Research Journal 36, 1966: 41 to
 * 43 % sitting, 49 to 52 % in a deep bend; from memory). The stretch of front is an assumption, not a measurement:
 * measure the wearer standing and bent where it matters.
 */
public final class BentKnee {
    /** Share by which the skin over the knee lengthens in a squat. */
    static final double EXTENSION = 0.40;

    /** Length of front that does so, as a share of the knee girth: 200 mm on 365. */
    static final double FRONT = 200.0 / 365;

    private BentKnee() {}

    /** Length of front that lengthens, mm: 200 on a knee of 365. */
    public static double zone(Body body) {
        return FRONT * body.mm(Measure.KNEE_GIRTH);
    }

    /** mm more over the front of the leg than standing. */
    public static double extra(Body body) {
        return EXTENSION * zone(body);
    }
}
