package stretchwright.sewing;

import stretchwright.ground.Said;
import stretchwright.pattern.Seam;

/** An edge of a piece that a step sews or marks. */
public record Joined(String piece, String edge) {
    static Joined of(Seam.Side side) {
        return new Joined(side.piece(), side.edge());
    }

    /** As the report has it: "leg: front inseam". */
    public String word() {
        return piece + ": " + edge;
    }

    /** For people. */
    public Said said() {
        return Tell.said("joined", Tell.piece(piece), Tell.edge(edge));
    }
}
