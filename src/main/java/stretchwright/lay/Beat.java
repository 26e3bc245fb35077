package stretchwright.lay;

/**
 * The heights at which a part may lie, in units: every so many from a first one on, so that a print meets at its seams.
 */
record Beat(long first, long every) {
    /** At any height. */
    static final Beat FREE = new Beat(0, 1);

    Beat {
        if (every < 1) {
            throw new IllegalArgumentException("a beat of " + every);
        }
    }

    /** The least height of the beat that is not below y. */
    long from(long y) {
        return y + Math.floorMod(first - y, every);
    }
}
