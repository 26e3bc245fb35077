package stretchwright.lay.nest;

/**
 * What share of the length to take off at a time while exploring: much at first, halved where that is too much, down to the
 * least. Where even that is missed time after time it grows again: a layout that touches everywhere is held by what is just
 * too short for it, and gives way only to another one that is shorter by more. Grown to the most in vain it begins with the
 * least again, the other way: from the shortest layout, or from the states that failed before.
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
    /** The same of any share that is begun anew. */
    private static final int MISSES_ANEW = 4;

    private boolean anew;
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

    /** Whether each share is begun from the shortest layout, else from the states that failed at that share before. */
    boolean anew() {
        return anew;
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
        if (misses < patience()) {
            return false;
        }
        misses = 0;
        grow();
        return true;
    }

    private int patience() {
        if (anew) {
            return MISSES_ANEW;
        }
        return least > LEAST ? MISSES_OF_MORE : MISSES_OF_LEAST;
    }

    private void grow() {
        least *= 2;
        if (least > MOST_AGAIN) {
            least = LEAST;
            anew = !anew;
        }
        share = least;
    }

    /** Another worker's layout is shorter. */
    void overtaken() {
        share = large() ? share : LEAST;
        reached();
    }
}
