package stretchwright.print.kit;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Unit;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;

/** What the drawing of a lay needs: the cloth, how it is laid, what follows from it, and the pieces on it. */
public record LaidCloth(Unit unit, Fabric fabric, Lay lay, ClothUse use, List<Piece> pieces) {
    public LaidCloth {
        pieces = List.copyOf(pieces);
    }

    public Piece piece(PieceName name) {
        return pieces.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no piece " + name));
    }

    /** The reminder on every grain line; the pieces lie across the cloth in any case. */
    public String around() {
        return around(fabric);
    }

    public static String around(Fabric fabric) {
        if (mostAround(fabric)) {
            return Phrases.of("lay.around-most");
        }
        return fabric.crosswise() ? Phrases.of("lay.around-along") : Phrases.of("lay.around-across");
    }

    public String aroundTheLeg() {
        return aroundTheLeg(fabric);
    }

    public static String aroundTheLeg(Fabric fabric) {
        if (mostAround(fabric)) {
            return Phrases.of("lay.around-leg-most");
        }
        return fabric.crosswise() ? Phrases.of("lay.around-leg-along") : Phrases.of("lay.around-leg-across");
    }

    /** What an arrow round the leg says: the stretch around the body. */
    public static String most(Fabric fabric) {
        if (mostAround(fabric)) {
            return Phrases.of("piece.stretch-most");
        }
        return fabric.crosswise() ? Phrases.of("piece.stretch-along") : Phrases.of("piece.stretch-across");
    }

    private static boolean mostAround(Fabric fabric) {
        return fabric.test().stretchAcross() >= fabric.test().stretchAlong();
    }
}
