package stretchwright.lay;

import stretchwright.lay.nest.Effort;

/**
 * From which seed and for how long lays are searched: until the effort is spent or the clock says so. The same seed and an
 * effort without a clock give the same lays.
 *
 * @param effort of each search
 * @param clock over all searches together, and what comes beside them
 */
public record SearchWork(long seed, Effort effort, ClubClock clock) {
    /** By the effort alone. */
    public static SearchWork of(long seed, Effort effort) {
        return new SearchWork(seed, effort, ClubClock.NONE);
    }

    /** That part of the clock's time for the same. */
    SearchWork within(double from, double to) {
        return new SearchWork(seed, effort, clock.within(from, to));
    }
}
