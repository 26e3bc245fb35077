package stretchwright.exchange;

import java.util.Map;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/**
 * A pattern and what must go with it: an outline without its stretch cannot be used again.
 *
 * @param make name of the make, as the maker wrote it
 * @param wearer name or code; may be empty
 * @param cloths names of the cloths by the names of the pieces cut from them; other pieces are cut from the main cloth
 * @param mainCloth its name; may be empty
 * @param stretchAcross share at an easy pull, of every cloth
 * @param stretchAlong the same, parallel to the selvage
 */
public record Handover(
        Pattern pattern,
        String make,
        String wearer,
        String mainCloth,
        Map<String, String> cloths,
        double stretchAcross,
        double stretchAlong) {
    public Handover {
        cloths = Map.copyOf(cloths);
    }

    String clothOf(Piece piece) {
        return cloths.getOrDefault(piece.name().word(), mainCloth);
    }
}
