package stretchwright.lay;

import stretchwright.lay.nest.LayClock;

/**
 * The clock outside several searches, for tables, ways of laying or stretches: each part of the whole time has a clock of
 * its own, which had best run from when it is first asked, as the first lays come before that.
 */
public interface ClubClock {
    /** No clock: the effort alone ends each search. */
    ClubClock NONE = (from, to) -> LayClock.NONE;

    /** @param from and to: shares of the whole time, 0 to 1 */
    LayClock part(double from, double to);

    /** That part of the time as a whole of its own. */
    default ClubClock within(double from, double to) {
        return (a, b) -> part(from * (1 - a) + to * a, from * (1 - b) + to * b);
    }
}
