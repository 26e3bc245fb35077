package stretchwright.intake;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/** A second cloth of the same make, in another colour or print, and the pieces that are cut from it. */
public record Contrast(Fabric fabric, List<String> pieces) {
    public Contrast {
        pieces = List.copyOf(pieces);
    }

    /** Those of a pattern that are cut from it. */
    public List<Piece> pieces(Pattern pattern) {
        return pattern.pieces().stream().filter(p -> pieces.contains(p.name())).toList();
    }
}
