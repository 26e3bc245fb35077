package stretchwright.body;

/** How far a careful tape reading can be trusted. */
final class HandMeasuring {
    /**
     * Two readings of the same measure differ by less than 2.8 standard deviations of one reading in 95 of 100 cases
     * (ISO 5725-6: repeatability limit r = 2.8 s).
     */
    private static final double LIMIT_IN_SPREADS = 2.8;

    private HandMeasuring() {}

    /**
     * One standard deviation of a single reading, mm: the difference at which two readings are taken again, divided by
     * 2.8. The differences are a working rule of tape measuring (5 mm ankle, knee, calf and heel, 8 thigh, 12 waist and
     * hip, 10 heights; common practice) beside ISO 20685, which allows 4 mm of mean difference at limbs, 9 at the trunk,
     * 4 in heights and 2 at the foot. Crotch lengths count with waist and hip, the foot with the ankle.
     */
    static double spread(Measure measure) {
        return repeatLimit(measure) / LIMIT_IN_SPREADS;
    }

    /** Measure again where two readings differ by more, mm. */
    static double repeatLimit(Measure measure) {
        return switch (measure) {
            case WAIST_GIRTH, HIP_GIRTH, TOTAL_CROTCH_LENGTH, BACK_CROTCH_LENGTH -> 12;
            case THIGH_GIRTH, MID_THIGH_GIRTH -> 8;
            case KNEE_GIRTH, CALF_GIRTH, ANKLE_GIRTH, HEEL_GIRTH, FOOT_LENGTH -> 5;
            case STATURE,
                    WAIST_HEIGHT,
                    HIP_HEIGHT,
                    CROTCH_HEIGHT,
                    KNEE_HEIGHT,
                    CALF_HEIGHT,
                    ANKLE_HEIGHT,
                    ANKLE_BONE_HEIGHT -> 10;
        };
    }

    /**
     * Technical error of measurement of pairs of readings: sqrt(sum of squared differences / 2N) (Dahlberg; the usual
     * formula of anthropometry).
     */
    static double technicalError(double[] first, double[] second) {
        if (first.length != second.length || first.length == 0) {
            throw new IllegalArgumentException("readings come in pairs, and at least one pair is needed");
        }
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += (first[i] - second[i]) * (first[i] - second[i]);
        }
        return Math.sqrt(sum / (2 * first.length));
    }
}
