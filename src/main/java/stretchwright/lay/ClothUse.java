package stretchwright.lay;

import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Piece;

/**
 * What follows from a finished lay: the sum to buy, how to cut, what is left, and whether the cloth at hand is enough.
 *
 * @param offcuts what can be cut from the leftovers
 * @param onHand empty where no cloth is at hand
 */
public record ClothUse(
        Buying buying,
        CuttingGuide guide,
        List<Leftover> leftovers,
        List<Offcut.Fit> offcuts,
        Optional<OnHand> onHand) {
    public ClothUse {
        leftovers = List.copyOf(leftovers);
        offcuts = List.copyOf(offcuts);
    }

    /** @param matchAt the notch at which a print is to meet */
    public static ClothUse of(
            Lay lay,
            List<Piece> pieces,
            Fabric fabric,
            Optional<String> matchAt,
            Buying.Counter counter,
            Optional<OnHand> onHand) {
        List<Leftover> leftovers = Leftover.of(lay, pieces, fabric);
        return new ClothUse(
                Buying.of(lay.length(), fabric, counter),
                CuttingGuide.of(lay, pieces, fabric, matchAt),
                leftovers,
                Offcut.from(leftovers, pieces),
                onHand);
    }
}
