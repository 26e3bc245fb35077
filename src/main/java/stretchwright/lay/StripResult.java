package stretchwright.lay;

import java.util.List;

/**
 * A valid layout of a strip instance, in the instance's units.
 *
 * @param length the largest x of any corner
 * @param density area of all copies over strip height times length
 * @param work what was spent: positions tried and pairs of outlines compared
 * @param history each layout shorter than all before: the work spent when it was found, and its length
 */
public record StripResult(List<Placement> placements, double length, double density, long work, List<Step> history) {
    /** One copy of an item: turned about the origin, then moved by (x, y). */
    public record Placement(String item, double x, double y, double rotation) {}

    public record Step(long work, double length) {}

    public StripResult {
        placements = List.copyOf(placements);
        history = List.copyOf(history);
    }
}
