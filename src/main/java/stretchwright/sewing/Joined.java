package stretchwright.sewing;

import stretchwright.ground.Said;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;

/** An edge of a piece that a step sews or marks. */
public record Joined(PieceName piece, EdgeName edge) {
    static Joined of(Seam.Side side) {
        return new Joined(side.piece(), side.edge());
    }

    /** As the report has it: "leg: front inseam". */
    public String word() {
        return piece + ": " + edge;
    }

    /** For people. */
    public Said said() {
        return Tell.said("joined", piece.said(), edge.said());
    }
}
