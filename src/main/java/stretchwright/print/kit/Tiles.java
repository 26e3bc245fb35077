package stretchwright.print.kit;

import stretchwright.ground.Box;

/**
 * How a drawing plane is cut into sheets. Row A is the topmost, column 1 the leftmost.
 *
 * <p>Sheets overlap, so n sheets of usable length u and overlap o cover n (u - o) + o: the count is
 * ceil((L - o) / (u - o)) each way (trade-values section 7.2, worked example W16).
 */
public record Tiles(Paper sheet, int rows, int columns) {
    /** Of pages that are read and not joined. */
    public static final double MARGIN = Paper.MARGIN;

    public static Tiles covering(Paper sheet, double width, double height) {
        return new Tiles(
                sheet,
                count(height, sheet.height() - 2 * sheet.margin(), sheet.overlap()),
                count(width, sheet.width() - 2 * sheet.margin(), sheet.overlap()));
    }

    /** How many sheets of that usable side cover a length. */
    static int count(double length, double usable, double overlap) {
        return Math.max(1, (int) Math.ceil((length - overlap) / (usable - overlap) - 1e-9));
    }

    public int sheets() {
        return rows * columns;
    }

    public double stepX() {
        return sheet.width() - 2 * sheet.margin() - sheet.overlap();
    }

    public double stepY() {
        return sheet.height() - 2 * sheet.margin() - sheet.overlap();
    }

    /** The part of the plane that a sheet shows. */
    public Box window(Tile tile) {
        double x = tile.column() * stepX();
        double y = (rows - 1 - tile.row()) * stepY();
        return new Box(x, y, x + stepX() + sheet.overlap(), y + stepY() + sheet.overlap());
    }

    /** A sheet's place, counted from 0 at the top left. */
    public record Tile(int row, int column) {
        /** "B3"; after Z come AA, AB. */
        public String name() {
            String letter = row < 26
                    ? String.valueOf((char) ('A' + row))
                    : String.valueOf(new char[] {(char) ('A' + row / 26 - 1), (char) ('A' + row % 26)});
            return letter + (column + 1);
        }

        public Tile beside(int right, int down) {
            return new Tile(row + down, column + right);
        }
    }
}
