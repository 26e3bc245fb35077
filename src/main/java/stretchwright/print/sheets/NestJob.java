package stretchwright.print.sheets;

import java.util.List;
import java.util.Map;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Unit;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceName;
import stretchwright.print.kit.ClothName;
import stretchwright.print.kit.Letters;

/**
 * Everything that goes onto paper for one nest.
 *
 * @param patterns of the sizes, in the nest's order
 * @param cloths names of the cloths by the names of the pieces cut from them; other pieces are cut from the fabric
 * @param stops what speaks against cutting, each with the size it is of
 */
public record NestJob(
        Nest nest,
        List<Pattern> patterns,
        String make,
        Unit unit,
        Fabric fabric,
        Map<String, String> cloths,
        List<String> stops) {
    public NestJob {
        if (patterns.size() != nest.sizes().size()) {
            throw new IllegalArgumentException(nest.sizes().size() + " sizes, and patterns of " + patterns.size());
        }
        patterns = List.copyOf(patterns);
        cloths = Map.copyOf(cloths);
        stops = List.copyOf(stops);
    }

    String cloth(PieceName piece) {
        String contrast = cloths.get(piece.word());
        return contrast == null ? ClothName.of(fabric) : Letters.shortened(contrast, Letters.LONGEST_NAME);
    }
}
