package stretchwright.pattern;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * The name of a piece: what it is, and of which leg where they differ.
 *
 * @param garment whose it is, where several are laid together; empty otherwise
 * @param own its name where it is of no known kind; empty otherwise
 */
public record PieceName(String garment, PieceKind kind, WhichLeg leg, String own) {
    private static final String OF = ": ";

    public static PieceName of(PieceKind kind) {
        return of(kind, WhichLeg.BOTH);
    }

    public static PieceName of(PieceKind kind, WhichLeg leg) {
        return new PieceName("", kind, leg, "");
    }

    /** A name given by a person. */
    public static PieceName own(String name) {
        return new PieceName("", PieceKind.OWN, WhichLeg.BOTH, name);
    }

    /** The same piece of one of several garments. */
    public PieceName in(String itsGarment) {
        return new PieceName(itsGarment, kind, leg, own);
    }

    /** The same piece among those of its own garment. */
    public PieceName alone() {
        return in("");
    }

    /** Of the same leg, another kind of piece. */
    public PieceName with(PieceKind other) {
        return new PieceName(garment, other, leg, own);
    }

    public boolean is(PieceKind asked) {
        return kind == asked;
    }

    /** As written in the report: "leg", "left front leg", "waistband". */
    public String word() {
        String name = kind == PieceKind.OWN ? own : leg.of(kind.word());
        return garment.isEmpty() ? name : garment + OF + name;
    }

    public Said said() {
        Said name = kind == PieceKind.OWN ? Tell.said("piece.named", Part.text(own)) : leg.of(kind.said());
        return garment.isEmpty() ? name : Tell.said("piece.of-garment", Part.text(garment), name);
    }

    @Override
    public String toString() {
        return word();
    }
}
