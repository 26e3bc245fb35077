package stretchwright.lay;

import stretchwright.ground.Said;
import stretchwright.pattern.Piece;
import stretchwright.pattern.WhichLeg;

/**
 * For which side of the wearer a cut piece is. The unmirrored leg, seen from the outside of the cloth with its front on
 * the left, is the left leg: whoever looks at a wearer's left side sees the front on the left.
 */
public enum Hand {
    LEFT(Tell.said("hand.left"), "left"),
    RIGHT(Tell.said("hand.right"), "right"),
    /** One cut through two layers: both. */
    PAIR(Tell.said("hand.pair"), "left and right"),
    /** One of several pairs of mirror images, such as the two halves of each boot cover: as drawn. */
    AS_DRAWN(Tell.said("hand.as-drawn"), "as drawn"),
    TURNED(Tell.said("hand.mirrored"), "mirrored"),
    BOTH(Tell.said("hand.both"), "as drawn and mirrored"),
    /** It makes no difference. */
    EITHER(Said.NOTHING, "either");

    private final Said mark;
    private final String word;

    Hand(Said mark, String word) {
        this.mark = mark;
        this.word = word;
    }

    /** As it stands on the drawing. */
    public Said mark() {
        return mark;
    }

    /** As written in the report. */
    public String word() {
        return word;
    }

    static Hand of(Piece piece, Lay.Placement p) {
        WhichLeg leg = piece.name().leg();
        boolean own = leg != WhichLeg.BOTH;
        if (piece.mirrored()) {
            // a name with a side, or more than one pair: the mirror image is another part of the same side
            boolean sides = piece.cut() == 2 && !own;
            if (p.layers() == 2) {
                return sides ? PAIR : BOTH;
            }
            return p.mirrored() ? sides ? RIGHT : TURNED : sides ? LEFT : AS_DRAWN;
        }
        if (own && p.layers() == 1) {
            return leg == WhichLeg.LEFT ? LEFT : RIGHT;
        }
        return EITHER;
    }
}
