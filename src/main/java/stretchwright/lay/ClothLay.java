package stretchwright.lay;

import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Piece;

/** Pieces laid on the one cloth they are cut from, and what follows from that lay. */
public record ClothLay(Fabric fabric, List<Piece> pieces, Lay lay, ClothUse use) {
    public ClothLay {
        pieces = List.copyOf(pieces);
    }

    /** With what follows from the lay alone: nothing was tried for the cloth at hand. */
    public static ClothLay of(Fabric fabric, List<Piece> pieces, Lay lay, Buying.Counter counter) {
        return new ClothLay(
                fabric, pieces, lay, ClothUse.of(lay, pieces, fabric, Optional.empty(), counter, Optional.empty()));
    }
}
