package stretchwright.lay.nest;

/**
 * Where a part may lie across the strip, in units: its box between from and to, or, at the fold, with its own x = 0 on
 * from.
 */
public record Across(long from, long to, boolean atFold) {
    public static Across between(long from, long to) {
        return new Across(from, to, false);
    }

    public static Across atFold(long fold, long to) {
        return new Across(fold, to, true);
    }

    /** The least x of a shape's origin. */
    long least(Shape shape) {
        return atFold ? from : from - shape.minX;
    }

    /** The greatest x of a shape's origin. */
    long greatest(Shape shape) {
        return atFold ? from : to - shape.maxX;
    }

    public boolean holds(Shape shape) {
        return least(shape) <= greatest(shape) && (!atFold || from + shape.maxX <= to);
    }
}
