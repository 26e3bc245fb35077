package stretchwright.pattern;

import stretchwright.ground.Said;

/** The name of a seam, unique in a pattern: "front rise", "left inseam", "phone pocket upper edge". */
public sealed interface SeamName {
    /** Of one leg where they differ. */
    record OfLeg(SeamKind kind, WhichLeg leg) implements SeamName {
        @Override
        public String word() {
            return leg.of(kind.word());
        }

        @Override
        public Said said() {
            return leg.of(kind.said());
        }

        @Override
        public String toString() {
            return word();
        }
    }

    /** An edge of a pocket that is turned for itself. */
    record Turned(PieceName piece, EdgeName edge) implements SeamName {
        @Override
        public String word() {
            return piece + " " + edge;
        }

        @Override
        public Said said() {
            return Tell.said("seam.turned", piece.said(), edge.said());
        }

        @Override
        public String toString() {
            return word();
        }
    }

    static SeamName of(SeamKind kind) {
        return of(kind, WhichLeg.BOTH);
    }

    static SeamName of(SeamKind kind, WhichLeg leg) {
        return new OfLeg(kind, leg);
    }

    static SeamName turned(PieceName piece, EdgeName edge) {
        return new Turned(piece, edge);
    }

    /** As written in the report. */
    String word();

    Said said();
}
