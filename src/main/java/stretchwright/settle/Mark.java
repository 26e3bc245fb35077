package stretchwright.settle;

/**
 * What is read of a finished pair, in a squat where nothing else is said; in the order in which it teaches most. Along and across
 * are strains of marks that were 50 mm apart, edges mm down from where they are asked for.
 */
public enum Mark {
    /** Centre back, half way up the rise, along. */
    BACK_RISE(true),
    KNEE_ALONG(true),
    KNEE_ACROSS(true),
    /** Centre back edge below a dot on the skin at which it stood as placed. */
    BACK_EDGE(false),
    /** Middle of the thigh in front, along. */
    THIGH_ALONG(true),
    /** The finished band on two rods, stretch under its weight. */
    BAND(true),
    /** How far the hem rose. */
    HEM_RISE(false);

    /** Marks of 50 mm read twice, 1.4 %, and what the model leaves out, a point (docs/maths/fit.md, "First pair"). */
    private static final double STRAIN = Math.hypot(0.014, 0.01);

    /** A tape read twice, 2 mm, and what the model leaves out, 4 mm. */
    private static final double EDGE = Math.hypot(2, 4);

    private final boolean strain;

    Mark(boolean strain) {
        this.strain = strain;
    }

    /** Whether it is a share; else mm. */
    public boolean isStrain() {
        return strain;
    }

    /** One standard deviation of reading and model. */
    public double error() {
        return strain ? STRAIN : EDGE;
    }
}
