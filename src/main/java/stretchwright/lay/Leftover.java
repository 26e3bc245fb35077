package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Box;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Piece;

/**
 * A rectangle of cloth that no cut line enters, in the axes of the lay; mm.
 *
 * @param layers 2 where the cloth lies double
 * @param atFold it lies on the fold: opened it is one piece, twice as wide
 */
public record Leftover(double x, double y, double width, double height, int layers, boolean atFold) {
    /** Smaller sides are not kept in an offcut box, mm; the narrowest thing cut from it is a 50 mm strip. */
    static final double LEAST = 50;

    private static final int MOST = 8;

    /** A part of the spread cloth that lies alike throughout: so many layers, and whether a fold is its left edge. */
    private record Zone(Box box, int layers, boolean atFold) {}

    /** The rectangles left inside the lay, largest first, apart from each other; none reaches from one zone into another. */
    public static List<Leftover> of(Lay lay, List<Piece> pieces, Fabric fabric) {
        List<Polygon> taken = new ArrayList<>(OnCloth.outlines(lay, pieces));
        if (!fabric.roll().shape().whole()) {
            Taken.on(fabric, lay.method(), Grid.units(lay.doubled()), 0).forEach(s -> taken.add(s.polygon()));
        }
        return zones(lay, fabric).stream()
                .flatMap(z -> within(z, taken))
                .sorted(Comparator.comparingDouble(Leftover::area).reversed())
                .limit(MOST)
                .toList();
    }

    private static List<Zone> zones(Lay lay, Fabric fabric) {
        double w = lay.fabricWidth();
        double h = lay.spreadLength();
        double d = lay.doubled();
        return switch (lay.method()) {
            case OPEN -> List.of(new Zone(new Box(0, 0, w, h), 1, false));
            case FOLDED -> List.of(new Zone(new Box(0, 0, w, h), 2, true));
            case FOLDED_CROSSWISE -> List.of(new Zone(new Box(0, 0, w, h), 2, false));
            case FOLDED_OFF_THE_MIDDLE ->
                List.of(new Zone(new Box(0, 0, d, h), 2, true), new Zone(new Box(d, 0, w, h), 1, false));
            case PART_FOLDED ->
                List.of(
                        new Zone(new Box(0, 0, fabric.roll().usableWidth() / 2, d), 2, true),
                        new Zone(new Box(0, d, w, h), 1, false));
        };
    }

    private static Stream<Leftover> within(Zone zone, List<Polygon> taken) {
        Box box = zone.box();
        List<Polygon> moved = taken.stream()
                .map(p -> p.placed(false, 0, new Point(-box.minX(), -box.minY())))
                .toList();
        return new FreeRectangles(box.width(), box.height(), moved)
                .largest(LEAST, MOST).stream()
                        .map(b -> new Leftover(
                                b.minX() + box.minX(),
                                b.minY() + box.minY(),
                                b.width(),
                                b.height(),
                                zone.layers(),
                                zone.atFold() && b.minX() == 0));
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
