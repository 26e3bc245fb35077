package stretchwright.intake;

import java.util.List;
import stretchwright.fabric.Fabric;

/** A second cloth of the same make, in another colour or print, and the pieces that are cut from it. */
public record Contrast(Fabric fabric, List<String> pieces) {
    public Contrast {
        pieces = List.copyOf(pieces);
    }
}
