package stretchwright.report;

import stretchwright.lay.nest.StripResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Where a plain layout has its pieces, as every lay.json tells it: numbers as they are, for a rounded piece could overlap its neighbour. */
public final class Placements {
    private Placements() {}

    /** The rounds it took, which yield it again, and the placements. */
    public static void put(ObjectNode out, StripResult result) {
        out.putArray("rounds").add(result.spent().explore()).add(result.spent().compress());
        ArrayNode placements = out.putArray("placements");
        for (StripResult.Placement p : result.placements()) {
            placements
                    .addObject()
                    .put("item", p.item())
                    .put("x", p.x())
                    .put("y", p.y())
                    .put("rotation", p.rotation());
        }
    }
}
