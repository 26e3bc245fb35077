package stretchwright.pattern;

import stretchwright.ground.Said;

/**
 * What was asked for beside the measures, and which points of the leg moved for it.
 *
 * @param by what asked: the maker's own hand, or a word for the figure
 * @param word the same as written in the make file and the report
 * @param amount mm
 * @param shifts empty where the measures hold it already
 */
public record Moved(Said by, String word, double amount, Shifts shifts) {
    /** The word under which a maker's own shifts stand in the make file. */
    public static final String BY_HAND = "shifts";

    /** Whether it was asked for by a word for the figure. */
    public boolean isFigure() {
        return !word.equals(BY_HAND);
    }
}
