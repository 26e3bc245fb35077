package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import stretchwright.ground.Box;
import stretchwright.ground.Corners;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;

/**
 * The pieces side by side on one plane, and the sheets that show some of it.
 *
 * <p>The largest piece first; each next one goes, upright or turned a quarter, to the place of a coarse grid that needs
 * the fewest further sheets. Both ways of turning the sheet and the first piece are tried. Small, not proven least.
 */
record Plane(Tiles tiles, List<Spot> spots, List<Tile> sheets) {
    private static final double GAP = 8;
    private static final double STEP = 20;

    /** How far the rough outline of the search may stray from the drawn one, mm. */
    private static final double ROUGHNESS = 0.8;

    /** Half the thickest line and the roughness, so that the outermost cut line is drawn whole. */
    private static final double RIM = 2;

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final Comparator<Plane> FEWEST = Comparator.<Plane>comparingInt(p -> p.sheets.size())
            .thenComparingDouble(p -> p.extent().y())
            .thenComparingDouble(p -> p.extent().x());

    /** A piece's place: how its own coordinates come onto the plane, and its outline there. */
    record Spot(Sheeted sheeted, Motion motion, Polygon outline, Box box) {
        static Spot of(Sheeted piece, double degrees, double x, double y) {
            Polygon turned = piece.outline().placed(false, degrees, Point.ORIGIN);
            Point move = new Point(x - turned.box().minX(), y - turned.box().minY());
            Motion motion = new Motion(degrees, move);
            Polygon outline = new Polygon(motion.apply(rough(piece.outline().points())));
            return new Spot(piece, motion, outline, outline.box());
        }

        Spot moved(double right, double up) {
            Point move = new Point(right, up);
            List<Point> corners = new ArrayList<>(outline.points().size());
            outline.points().forEach(p -> corners.add(p.plus(move)));
            Polygon there = new Polygon(corners);
            return new Spot(sheeted, motion.then(move), there, there.box());
        }

        Geometry shape() {
            return ring(outline.points());
        }
    }

    static Plane of(List<Sheeted> all, Paper paper) {
        List<Sheeted> pieces = all.stream()
                .sorted(Comparator.comparingDouble((Sheeted p) -> -p.outline().area()))
                .toList();
        List<Plane> tries = new ArrayList<>();
        for (Paper sheet : paper.isRoll() ? List.of(paper) : List.of(paper, paper.turned())) {
            for (double degrees : new double[] {0, 90}) {
                tries.add(filled(pieces, sheet, degrees));
            }
        }
        Plane best = tries.stream().min(FEWEST).orElseThrow();
        return best.exact().shortened();
    }

    /** A curve's many chords would only slow the search down. */
    private static List<Point> rough(List<Point> outline) {
        Coordinate[] kept =
                DouglasPeuckerSimplifier.simplify(ring(outline), ROUGHNESS).getCoordinates();
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < kept.length - 1; i++) {
            out.add(new Point(kept[i].x, kept[i].y));
        }
        return out.size() < 3 ? outline : out;
    }

    private static LinearRing ring(List<Point> outline) {
        List<Coordinate> corners = new ArrayList<>();
        outline.forEach(p -> corners.add(new Coordinate(p.x(), p.y())));
        corners.add(corners.get(0));
        return SHAPES.createLinearRing(corners.toArray(new Coordinate[0]));
    }

    private static Plane filled(List<Sheeted> pieces, Paper sheet, double degrees) {
        Plane plane =
                new Plane(new Tiles(sheet, 1, 1), List.of(), List.of()).with(Spot.of(pieces.get(0), degrees, RIM, RIM));
        for (Sheeted piece : pieces.subList(1, pieces.size())) {
            plane = plane.withBest(piece);
        }
        return plane;
    }

    private Plane withBest(Sheeted piece) {
        List<IndexedFacetDistance> taken =
                spots.stream().map(s -> new IndexedFacetDistance(s.shape())).toList();
        Point now = extent();
        Covered covered = new Covered(piece.outline().box());
        Spot best = null;
        Point then = now;
        int fewest = Integer.MAX_VALUE;
        for (double degrees : new double[] {0, 90}) {
            Spot first = Spot.of(piece, degrees, RIM, RIM);
            Corners corners = Corners.of(first.outline().points());
            for (double y = RIM; y <= now.y() + GAP; y += STEP) {
                for (double x = RIM; x <= now.x() + GAP; x += STEP) {
                    Box box = moved(first.box(), x - RIM, y - RIM);
                    Point far = new Point(Math.max(now.x(), box.maxX()), Math.max(now.y(), box.maxY()));
                    int most = fewest - (nearer(far, then) ? 0 : 1);
                    // a piece more never needs fewer sheets
                    if (sheets.size() <= most) {
                        int count = covered.with(corners.moved(x - RIM, y - RIM), box, far, most);
                        Spot spot = count <= most ? first.moved(x - RIM, y - RIM) : first;
                        if (count <= most && free(spot, taken)) {
                            best = spot;
                            then = far;
                            fewest = count;
                        }
                    }
                }
            }
        }
        return with(best == null ? Spot.of(piece, 0, RIM, now.y() + GAP) : best);
    }

    private static Box moved(Box box, double right, double up) {
        return new Box(box.minX() + right, box.minY() + up, box.maxX() + right, box.maxY() + up);
    }

    private static boolean nearer(Point far, Point then) {
        return far.y() < then.y() || (far.y() == then.y() && far.x() < then.x());
    }

    /** Where sheets would lie if there were more of them, and on which of these the pieces placed so far would show; from below. */
    private final class Covered {
        private final Box[][] windows;
        private final boolean[][] shown;

        /** @param next the box of the piece that is placed next: so far at most sheets may be needed */
        Covered(Box next) {
            double reach = GAP + Math.max(next.width(), next.height()) + RIM;
            Tiles all = Tiles.covering(tiles.sheet(), extent().x() + reach, extent().y() + reach);
            windows = new Box[all.rows()][all.columns()];
            shown = new boolean[all.rows()][all.columns()];
            for (int row = 0; row < all.rows(); row++) {
                for (int column = 0; column < all.columns(); column++) {
                    Box window = all.window(new Tile(all.rows() - 1 - row, column));
                    windows[row][column] = window;
                    shown[row][column] = spots.stream().anyMatch(s -> Crossing.meets(window, s.outline(), s.box()));
                }
            }
        }

        /** How many sheets are not blank with a piece more; where that is more than most, any number above it. */
        int with(Corners piece, Box around, Point far, int most) {
            Tiles wide = Tiles.covering(tiles.sheet(), far.x() + RIM, far.y() + RIM);
            int count = 0;
            for (int row = 0; row < wide.rows() && count <= most; row++) {
                for (int column = 0; column < wide.columns() && count <= most; column++) {
                    boolean there = shown[row][column] || Crossing.meets(windows[row][column], piece, around);
                    count += there ? 1 : 0;
                }
            }
            return count;
        }
    }

    private boolean free(Spot spot, List<IndexedFacetDistance> taken) {
        Geometry shape = spot.shape();
        for (int i = 0; i < spots.size(); i++) {
            Polygon other = spots.get(i).outline();
            boolean inside = other.contains(spot.outline().points().get(0))
                    || spot.outline().contains(other.points().get(0));
            if (inside || taken.get(i).isWithinDistance(shape, GAP)) {
                return false;
            }
        }
        return true;
    }

    private Plane with(Spot spot) {
        List<Spot> all = new ArrayList<>(spots);
        all.add(spot);
        Point far = extent(all);
        Tiles wide = Tiles.covering(tiles.sheet(), far.x() + RIM, far.y() + RIM);
        return new Plane(wide, List.copyOf(all), wide.equals(tiles) ? added(wide, spot) : shown(wide, all));
    }

    private List<Tile> added(Tiles wide, Spot spot) {
        Set<Tile> all = new TreeSet<>(Comparator.comparingInt(Tile::row).thenComparingInt(Tile::column));
        all.addAll(sheets);
        all.addAll(shown(wide, List.of(spot)));
        return List.copyOf(all);
    }

    /** The sheets that are not blank, row by row. */
    private static List<Tile> shown(Tiles tiles, List<Spot> spots) {
        List<Tile> out = new ArrayList<>();
        for (int row = 0; row < tiles.rows(); row++) {
            for (int column = 0; column < tiles.columns(); column++) {
                Tile tile = new Tile(row, column);
                Box window = tiles.window(tile);
                if (spots.stream().anyMatch(s -> Crossing.meets(window, s.outline(), s.box()))) {
                    out.add(tile);
                }
            }
        }
        return List.copyOf(out);
    }

    /** The far corner of everything placed. */
    Point extent() {
        return extent(spots);
    }

    private static Point extent(List<Spot> spots) {
        double x = spots.stream().mapToDouble(s -> s.box().maxX()).max().orElse(0);
        double y = spots.stream().mapToDouble(s -> s.box().maxY()).max().orElse(0);
        return new Point(x, y);
    }

    /** The pieces as drawn in place of their rough outlines, and the sheets on which those show. */
    private Plane exact() {
        List<Spot> drawn = spots.stream()
                .map(s -> {
                    Polygon outline =
                            new Polygon(s.motion().apply(s.sheeted().outline().points()));
                    return new Spot(s.sheeted(), s.motion(), outline, outline.box());
                })
                .toList();
        Point far = extent(drawn);
        Tiles covering = Tiles.covering(tiles.sheet(), far.x() + RIM, far.y() + RIM);
        return new Plane(covering, drawn, shown(covering, drawn));
    }

    private Plane shortened() {
        if (!tiles.sheet().isRoll() || tiles.rows() > 1) {
            return this;
        }
        Paper cut = tiles.sheet().cutTo(extent().y() + RIM + 2 * tiles.sheet().margin());
        return new Plane(new Tiles(cut, 1, tiles.columns()), spots, sheets);
    }

    /** The first sheet on which a piece shows. */
    Optional<Tile> firstSheet(Spot spot) {
        return sheets.stream()
                .filter(t -> Crossing.meets(tiles.window(t), spot.outline(), spot.box()))
                .findFirst();
    }
}
