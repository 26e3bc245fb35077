package stretchwright.lay;

/**
 * What share of the length to take off at a time while exploring: much at first, halved where that is too much, down to the
 * least. Where even that is missed time after time it grows again: a layout that touches everywhere is held by what is just
 * too short for it, and gives way only to another one that is shorter by more.
 */
final class Stride {
    private static final double FIRST = 0.02;
    private static final double LEAST = 0.001;
    /** No more than this is tried again. */
    private static final double MOST_AGAIN = 0.016;

    /** So often the least is missed, by states disturbed each time, before twice as much is tried. */
    private static final int MISSES_OF_LEAST = 8;
    /** The same of what is more. */
    private static final int MISSES_OF_MORE = 3;

    private double share = FIRST;
    private double least = LEAST;
    private int misses;

    double share() {
        return share;
    }

    /** Whether less is still to be tried before it counts as missed. */
    boolean large() {
        return share > least;
    }

    /** A shorter layout was found. */
    void reached() {
        misses = 0;
        least = LEAST;
    }

    /** None was found. True where another share is to be tried now. */
    boolean missed() {
        if (large()) {
            share = Math.max(least, share / 2);
            return true;
        }
        misses++;
        if (misses < (least > LEAST ? MISSES_OF_MORE : MISSES_OF_LEAST)) {
            return false;
        }
        misses = 0;
        least = 2 * least > MOST_AGAIN ? LEAST : 2 * least;
        share = least;
        return true;
    }

    /** Another worker's layout is shorter. */
    void overtaken() {
        share = large() ? share : LEAST;
        reached();
    }
}
