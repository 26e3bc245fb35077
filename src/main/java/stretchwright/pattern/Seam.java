package stretchwright.pattern;

import java.util.List;

/**
 * Edges that are sewn together (or one edge that is turned up).
 *
 * @param role what kind of place it is; decides stitch, order and notches
 * @param name unique, such as "front rise"
 * @param sides what meets what; a rise joins the left and the right leg, an inseam two edges of one leg
 * @param ease length of the second side minus length of the first, as intended, in mm; negative: the second is
 *     stretched to the first
 * @param allowance in mm
 * @param times how many there are in the garment (an inseam: two)
 */
public record Seam(Role role, SeamName name, List<Side> sides, double ease, double allowance, int times) {
    public enum Role {
        FRONT_RISE,
        BACK_RISE,
        INSEAM,
        SIDE_SEAM,
        /** The two legs of one dart. */
        DART,
        /** Where a strip along the side meets front and back. */
        PANEL,
        /** A diamond at the crotch, four edges. */
        GUSSET,
        /** Edge of a pocket that is turned under and sewn onto the leg, or closed. */
        POCKET,
        /** Edge of a pocket that is hemmed and stays open. */
        POCKET_OPENING,
        WAISTBAND_ENDS,
        WAISTBAND_JOIN,
        /** The upper edges of the two layers of a contoured band. */
        WAISTBAND_TOP,
        /** The legs' own top, turned down over an elastic. */
        CASING,
        /** Upper edge of the key pocket, turned. */
        KEY_POCKET_HEM,
        /** Sides of the key pocket, sewn onto the band. */
        KEY_POCKET,
        CUFF_ENDS,
        CUFF_JOIN,
        /** Front and back seam of a boot cover. */
        COVER_SEAM,
        COVER_JOIN,
        /** A strap of cloth, closed along its length into a tube. */
        STRAP_EDGES,
        STRAP_ENDS,
        HEM
    }

    /** One edge in a seam, with its sewn length in mm: the whole ring where it is one, both halves of a half piece. */
    public record Side(PieceName piece, EdgeName edge, double length) {}

    public Seam {
        sides = List.copyOf(sides);
        if (sides.isEmpty() || sides.size() > 2 || times < 1) {
            throw new IllegalArgumentException(name + ": a seam has one or two sides, and happens at least once");
        }
    }

    /** Length sewn for one such seam, in mm: the longer side. */
    public double length() {
        return sides.stream().mapToDouble(Side::length).max().orElseThrow();
    }
}
