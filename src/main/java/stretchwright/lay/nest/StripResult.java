package stretchwright.lay.nest;

import java.util.List;

/**
 * A valid layout of a strip instance, in the instance's units.
 *
 * @param length the largest x of any corner
 * @param density area of all copies over strip height times length
 * @param spent the rounds it took; the same seed and these rounds give it again
 * @param history each layout shorter than all before: the round in which it was found (0: to start with), and its length
 */
public record StripResult(List<Placement> placements, double length, double density, Effort spent, List<Step> history) {
    /** One copy of an item: turned about the origin, then moved by (x, y). */
    public record Placement(String item, double x, double y, double rotation) {}

    public record Step(int round, double length) {}

    public StripResult {
        placements = List.copyOf(placements);
        history = List.copyOf(history);
    }
}
