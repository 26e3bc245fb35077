package stretchwright.sewing;

/**
 * What a step asks of the sewer, in minutes of a practised one: taking up and turning, pinning, and sewing.
 *
 * @param handling edges brought together, cloth turned, marked, pressed, threads cut
 * @param pinning pins or clips placed and taken out
 * @param needle under the needle, stops included
 */
record Work(double handling, double pinning, double needle) {
    /** Nothing pinned, nothing sewn. */
    static Work handling(double minutes) {
        return new Work(minutes, 0, 0);
    }

    Work plus(Work other) {
        return new Work(handling + other.handling, pinning + other.pinning, needle + other.needle);
    }

    /** In whole tenths of a minute, so that sums are exact. */
    int tenths(Band band) {
        double minutes = band.handling * handling + band.pinning * pinning + band.needle * needle + band.reading;
        return (int) Math.max(1, Math.round(minutes * 10));
    }

    /**
     * How well the sewer knows the work. Common practice, no source: a first pair is read, pinned twice as close and sewn
     * more slowly; with several pairs the hand has learnt what comes next.
     */
    enum Band {
        FIRST_PAIR(2, 2, 1.5, 1),
        KNOWN_DRAFT(1, 1, 1, 0),
        SEVERAL_PAIRS(0.8, 1, 1, 0);

        private final double handling;
        private final double pinning;
        private final double needle;
        private final double reading;

        Band(double handling, double pinning, double needle, double reading) {
            this.handling = handling;
            this.pinning = pinning;
            this.needle = needle;
            this.reading = reading;
        }
    }
}
