package stretchwright.pattern;

import stretchwright.ground.Path;

/**
 * One side of a piece between two corners, along the sew line, in the direction of the piece's outline.
 *
 * @param name unique within the piece
 * @param line the sew line
 * @param allowance added outside the sew line, in mm; 0 on a fold
 * @param turned the allowance is folded back onto the piece: at its ends it is cut as the mirror image of what it
 *     will lie on
 */
public record Edge(EdgeName name, Path line, double allowance, boolean turned) {
    /** Wider than any seam or hem of this kind of garment. */
    public static final double WIDEST_ALLOWANCE = 80;

    public Edge(EdgeName name, Path line, double allowance) {
        this(name, line, allowance, false);
    }

    public Edge {
        line = line.onGrid();
        if (!(allowance >= 0 && allowance <= WIDEST_ALLOWANCE)) {
            throw new IllegalArgumentException(
                    "allowance of " + name + " is " + allowance + " mm; 0 to " + WIDEST_ALLOWANCE);
        }
    }

    /** The same edge along another line. */
    public Edge on(Path other) {
        return new Edge(name, other, allowance, turned);
    }

    public double length() {
        return line.length();
    }
}
