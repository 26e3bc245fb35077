package stretchwright.fabric;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Polygon;

/**
 * What of the cloth can be cut from, where that is not simply the whole width: x from the left edge of the usable width, y
 * from the cut end, mm.
 *
 * @param outline of a remnant; empty for cloth with straight selvages
 * @param flaws holes, stains and pulled threads to lay round
 * @param selvage width of the strip beside the usable width, at each selvage; 0 where it is not told
 */
public record ClothShape(Optional<Polygon> outline, List<Polygon> flaws, double selvage) {
    /** The whole width, without a flaw. */
    public static final ClothShape WHOLE = new ClothShape(Optional.empty(), List.of());

    public ClothShape {
        flaws = List.copyOf(flaws);
    }

    public ClothShape(Optional<Polygon> outline, List<Polygon> flaws) {
        this(outline, flaws, 0);
    }

    /** Whether pieces may lie anywhere on the usable width. */
    public boolean whole() {
        return outline.isEmpty() && flaws.isEmpty();
    }
}
