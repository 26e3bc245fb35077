package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;

/** Pieces in one row at true size, in the order of the pattern, as far from each other as from the rim. */
record SideBySide(List<Spot> spots, double width, double height) {
    static final double GAP = 20;

    /** @param move brings the piece's own coordinates to its place */
    record Spot(Piece piece, Point move) {}

    static SideBySide of(List<Piece> pieces) {
        List<Spot> spots = new ArrayList<>();
        double x = GAP;
        double highest = 0;
        for (Piece piece : pieces) {
            Box box = piece.cutLine().box();
            spots.add(new Spot(piece, new Point(x - box.minX(), GAP - box.minY())));
            x += box.width() + GAP;
            highest = Math.max(highest, box.height());
        }
        return new SideBySide(List.copyOf(spots), x, highest + 2 * GAP);
    }
}
