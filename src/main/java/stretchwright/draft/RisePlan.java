package stretchwright.draft;

/**
 * What a trial has before the inseam's place is settled.
 *
 * @param scale size of the body beside the one on which the bounds were found
 * @param front by how much the front half of the seam is longer than the body asks, mm
 * @param frontUp how much higher than usual the centre front is to stand, mm: so much, and where its waist was measured
 */
record RisePlan(
        double give,
        double scale,
        double width,
        double side,
        double ends,
        double crotchTaken,
        double riseTaken,
        double estimate,
        double hip,
        double front,
        double back,
        double frontUp,
        double backUp) {
    /** Centre back over centre front, mm: from and to; and how far each may stand above the side (no source). */
    private static final double LEAST_TILT = 5;

    private static final double MOST_TILT = 60;
    private static final double FRONT_UP = 18;
    private static final double BACK_UP = 56;

    /** By how much the tilt is out of its bounds, mm; 0 inside. */
    double excess(RiseTrial trial) {
        double over = distance(trial, true);
        double under = distance(trial, false);
        return over > 0 ? over : under < 0 ? under : 0;
    }

    /** From the upper or the lower bound of the tilt, mm. */
    double distance(RiseTrial trial, boolean most) {
        double more = backUp - frontUp;
        double bound = most
                ? Math.min(MOST_TILT * scale + more, 2 * BACK_UP * scale + 2 * backUp - ends)
                : Math.max(LEAST_TILT * scale + more, ends - 2 * FRONT_UP * scale - 2 * frontUp);
        return trial.tilt() - bound;
    }
}
