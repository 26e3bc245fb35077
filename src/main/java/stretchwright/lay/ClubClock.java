package stretchwright.lay;

import stretchwright.lay.nest.LayClock;

/**
 * The clock outside several searches, for tables, ways of laying or stretches: each part of the whole time has a clock of
 * its own, which had best run from when it is first asked, as the first lays come before that.
 */
public interface ClubClock {
    /** No clock: the effort alone ends each search. */
    ClubClock NONE = of(LayClock.NONE);

    /** @param from and to: shares of the whole time, 0 to 1 */
    LayClock part(double from, double to);

    /** For what is done beside the searches, first lays, outlines, floors: it takes no part of the time, and only stops. */
    default LayClock beside() {
        return LayClock.NONE;
    }

    /** Whether each part of the time comes after the one before it, so that what has one must wait for its turn. */
    default boolean inTurn() {
        return true;
    }

    /** That part of the time as a whole of its own. */
    default ClubClock within(double from, double to) {
        return of((a, b) -> part(from * (1 - a) + to * a, from * (1 - b) + to * b), beside());
    }

    static ClubClock of(ClubClock parts, LayClock beside) {
        return new ClubClock() {
            @Override
            public LayClock part(double from, double to) {
                return parts.part(from, to);
            }

            @Override
            public LayClock beside() {
                return beside;
            }
        };
    }

    /** One clock over all of it: the searches go on side by side and end, or are not begun, when it stops. */
    static ClubClock of(LayClock all) {
        return new ClubClock() {
            @Override
            public LayClock part(double from, double to) {
                return all;
            }

            @Override
            public LayClock beside() {
                return all;
            }

            @Override
            public boolean inTurn() {
                return false;
            }
        };
    }
}
