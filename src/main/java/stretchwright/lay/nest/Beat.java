package stretchwright.lay.nest;

/**
 * The heights at which a part may lie, in units: every so many from a first one on, so that a print meets at its seams.
 */
public record Beat(long first, long every) {
    /** At any height. */
    public static final Beat FREE = new Beat(0, 1);

    public Beat {
        if (every < 1) {
            throw new IllegalArgumentException("a beat of " + every);
        }
    }

    /** The least height of the beat that is not below y. */
    long from(long y) {
        return y + Math.floorMod(first - y, every);
    }
}
