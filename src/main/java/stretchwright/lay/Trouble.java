package stretchwright.lay;

/**
 * Why pieces that were put by hand cannot be cut so.
 *
 * @param piece number of the placement in its lay, from 0; less where it is none in particular
 * @param other the one that it lies in the way of; less than 0 where there is none
 * @param mm by how much, or how far off; 0 where that says nothing
 */
public record Trouble(Kind kind, int piece, int other, double mm) {
    public enum Kind {
        OVERLAPS,
        NEAR,
        BEYOND,
        FLAW,
        REMNANT,
        LAYERS,
        FOLD,
        TURNED,
        PRINT,
        /** Of the lay as a whole: a piece too many or too few, cloth of another width. */
        OTHER
    }

    /** Whether that placement is one of those that it is about. */
    public boolean about(int placement) {
        return piece == placement || other == placement;
    }
}
