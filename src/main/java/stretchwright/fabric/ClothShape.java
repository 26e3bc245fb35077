package stretchwright.fabric;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Polygon;

/**
 * What of the cloth can be cut from, where that is not simply the whole width: x from one edge of the usable width, y
 * from the cut end, mm.
 *
 * @param outline of a remnant; empty for cloth with straight selvages
 * @param flaws holes, stains and pulled threads to lay round
 */
public record ClothShape(Optional<Polygon> outline, List<Polygon> flaws) {
    /** The whole width, without a flaw. */
    public static final ClothShape WHOLE = new ClothShape(Optional.empty(), List.of());

    public ClothShape {
        flaws = List.copyOf(flaws);
    }
}
