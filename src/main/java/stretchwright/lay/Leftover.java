package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Box;
import stretchwright.ground.Grid;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Piece;

/**
 * A rectangle of cloth that no cut line enters, in the axes of the lay; mm.
 *
 * @param layers 2 on folded cloth
 * @param atFold it lies on the fold: opened it is one piece, twice as wide
 */
public record Leftover(double x, double y, double width, double height, int layers, boolean atFold) {
    /** Smaller sides are not kept in an offcut box, mm; the narrowest thing cut from it is a 50 mm strip. */
    static final double LEAST = 50;

    private static final int MOST = 8;

    /** The rectangles left inside the lay, largest first, apart from each other. */
    public static List<Leftover> of(Lay lay, List<Piece> pieces, Fabric fabric) {
        boolean folded = lay.method() == Lay.Method.FOLDED;
        List<Polygon> taken = new ArrayList<>(OnCloth.outlines(lay, pieces));
        taken.addAll(notThere(lay, fabric));
        FreeRectangles free = new FreeRectangles(lay.fabricWidth(), lay.spreadLength(), taken);
        return free.largest(LEAST, MOST).stream()
                .map(b -> new Leftover(
                        b.minX(), b.minY(), b.width(), b.height(), folded ? 2 : 1, folded && b.minX() == 0))
                .toList();
    }

    /** Flaws, what a remnant lacks, and the half width beside a folded stretch. */
    private static List<Polygon> notThere(Lay lay, Fabric fabric) {
        if (lay.method() == Lay.Method.PART_FOLDED) {
            double half = fabric.usableWidth() / 2;
            return List.of(new Polygon(new Box(half, 0, lay.fabricWidth(), lay.doubled()).corners()));
        }
        return Taken.on(fabric, lay.method(), Grid.units(lay.doubled()), 0).stream()
                .map(Shape::polygon)
                .toList();
    }

    public double area() {
        return width * height;
    }

    /** How many pieces of a size come out, laid side by side in rows along the grain, not turned. */
    int yields(double across, double along) {
        int flat = rows(width, across) * rows(height, along) * layers;
        int opened = atFold ? rows(2 * width, across) * rows(height, along) : 0;
        return Math.max(flat, opened);
    }

    private static int rows(double room, double size) {
        return (int) Math.floor(room / size + 1e-9);
    }
}
