package stretchwright.pattern;

import stretchwright.ground.Path;

/**
 * One side of a piece between two corners, along the sew line, in the direction of the piece's outline.
 *
 * @param name unique within the piece, such as "front inseam"
 * @param line the sew line
 * @param allowance added outside the sew line, in mm; 0 on a fold
 */
public record Edge(String name, Path line, double allowance) {
    /** Wider than any seam or hem of this kind of garment. */
    public static final double WIDEST_ALLOWANCE = 80;

    public Edge {
        line = line.onGrid();
        if (!(allowance >= 0 && allowance <= WIDEST_ALLOWANCE)) {
            throw new IllegalArgumentException(
                    "allowance of " + name + " is " + allowance + " mm; 0 to " + WIDEST_ALLOWANCE);
        }
    }

    public double length() {
        return line.length();
    }
}
