package stretchwright.lay;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Overlap;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/**
 * Pieces laid as somebody put them.
 *
 * <p>In: pieces, cloth, the usual lay of them and the places. Out: the lay that they make, and what does not hold of it
 * ({@link LayCheck}, as of every lay); its floor is the usual lay's, which holds for every lay.
 */
public final class Relaying {
    /** Directions in which a way out is looked for. */
    private static final int WAYS = 24;
    /** Farther than this nobody is told to move a piece, mm. */
    private static final double FARTHEST = 400;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;

    public Relaying(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        this.pieces = List.copyOf(pieces);
        this.fabric = fabric;
        this.terms = terms;
    }

    /**
     * A lay as it was put, and what is wrong with it.
     *
     * @param troubles none where it can be cut so
     */
    public record Tried(Lay lay, List<Trouble> troubles) {
        public Tried {
            troubles = List.copyOf(troubles);
        }

        public boolean holds() {
            return troubles.isEmpty();
        }
    }

    /** That lay where it holds, and is no longer than the usual one or was put by hand; else empty. */
    public Optional<Lay> instead(Lay usual, Placed placed) {
        return tried(usual, placed)
                .filter(Tried::holds)
                .map(Tried::lay)
                .filter(l -> placed.byHand() || Grid.units(l.length()) <= Grid.units(usual.length()));
    }

    /** Empty where the pieces are other ones, or may no more be laid in that way. */
    public Optional<Tried> tried(Lay usual, Placed placed) {
        Set<String> known = pieces.stream().map(p -> p.name().word()).collect(Collectors.toSet());
        boolean strange = placed.spots().stream()
                .anyMatch(s -> !known.contains(s.piece())
                        || s.unfolded() && !piece(s.piece()).onFold());
        boolean permitted = placed.method() == usual.method()
                || new Permitted(pieces, fabric, terms)
                        .methods(new Findings("lay"))
                        .contains(placed.method());
        if (strange || !permitted || placed.spots().isEmpty()) {
            return Optional.empty();
        }
        Lay lay = lay(usual, placed);
        List<Faults.Fault> faults = LayCheck.found(pieces, fabric, terms, lay);
        return Optional.of(new Tried(lay, troubles(lay, faults)));
    }

    private Piece piece(String name) {
        return pieces.stream()
                .filter(p -> p.name().word().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Lay lay(Lay usual, Placed placed) {
        List<Lay.Placement> placements =
                placed.spots().stream().map(this::placement).toList();
        double top = placements.stream()
                .mapToDouble(
                        p -> OnCloth.outline(piece(p.piece().word()), p).box().maxY())
                .max()
                .orElseThrow();
        // the floor is below every lay that holds; one that does not is told without
        double length = Math.max(1, Grid.snap(top)) * (placed.method() == Lay.Method.FOLDED_CROSSWISE ? 2 : 1);
        return new Lay(
                placed.method(),
                Grid.mm(width(placed)),
                length,
                Shop.metric(Shop.needed(Math.max(0, length), fabric)),
                usual.use() * usual.length() / length,
                Math.min(usual.floor(), length),
                placed.doubled(),
                placements,
                ways(usual, placed.method(), length));
    }

    private static List<Lay.Way> ways(Lay usual, Lay.Method method, double length) {
        return Stream.concat(
                        Stream.of(new Lay.Way(method, length)),
                        usual.ways().stream().filter(w -> w.method() != method))
                .sorted(Comparator.comparingDouble(Lay.Way::length))
                .toList();
    }

    private long width(Placed placed) {
        long whole = Spread.whole(fabric);
        return switch (placed.method()) {
            case FOLDED -> whole / 2;
            case FOLDED_OFF_THE_MIDDLE -> whole - Grid.units(placed.doubled());
            case OPEN, FOLDED_CROSSWISE, PART_FOLDED -> whole;
        };
    }

    private Lay.Placement placement(Placed.Spot s) {
        Piece piece = piece(s.piece());
        List<Double> grain = Stream.of(piece.grain().from(), piece.grain().to())
                .map(end -> (s.mirrored() ? end.mirrored() : end).turned(s.rotation()))
                .map(end -> Grid.mm(Grid.units(end.x()) + Grid.units(s.x())))
                .toList();
        return new Lay.Placement(
                piece.name(),
                s.copy(),
                Grid.snap(s.x()),
                Grid.snap(s.y()),
                s.rotation(),
                s.mirrored(),
                s.unfolded(),
                s.layers(),
                grain);
    }

    /** Of two that overlap it need not be told that they are near. */
    private List<Trouble> troubles(Lay lay, List<Faults.Fault> faults) {
        return faults.stream()
                .filter(f -> f.kind() != Trouble.Kind.NEAR
                        || faults.stream()
                                .noneMatch(o -> o.kind() == Trouble.Kind.OVERLAPS
                                        && o.who().equals(f.who())))
                .map(f -> trouble(lay, f))
                .toList();
    }

    private Trouble trouble(Lay lay, Faults.Fault fault) {
        List<Integer> who =
                fault.who().stream().map(p -> lay.placements().indexOf(p)).toList();
        int one = who.isEmpty() ? -1 : who.get(0);
        int other = who.size() < 2 ? -1 : who.get(1);
        return new Trouble(fault.kind(), one, other, far(lay, fault, one, other));
    }

    private double far(Lay lay, Faults.Fault fault, int one, int other) {
        return switch (fault.kind()) {
            case OVERLAPS -> wayOut(outline(lay, one), outline(lay, other));
            case BEYOND -> beyond(lay, outline(lay, one));
            case NEAR -> terms.gap();
            default -> 0;
        };
    }

    private Polygon outline(Lay lay, int i) {
        Lay.Placement p = lay.placements().get(i);
        return OnCloth.outline(piece(p.piece().word()), p);
    }

    private static double beyond(Lay lay, Polygon outline) {
        double left = -outline.box().minX();
        double right = outline.box().maxX() - lay.fabricWidth();
        return Math.max(Math.max(left, right), -outline.box().minY());
    }

    /** The least move of the one, in any of some directions, after which it lies beside the other, mm. */
    private static double wayOut(Polygon one, Polygon other) {
        double least = FARTHEST;
        for (int k = 0; k < WAYS; k++) {
            Point way = new Point(1, 0).turned(360.0 * k / WAYS);
            double from = 0;
            double to = least;
            if (overlap(one, other, way.times(to))) {
                continue;
            }
            while (to - from > Grid.STEP) {
                double middle = (from + to) / 2;
                boolean in = overlap(one, other, way.times(middle));
                from = in ? middle : from;
                to = in ? to : middle;
            }
            least = to;
        }
        return least;
    }

    private static boolean overlap(Polygon one, Polygon other, Point move) {
        Polygon moved = one.placed(false, 0, move);
        return Overlap.between(units(moved, true), units(moved, false), units(other, true), units(other, false));
    }

    private static long[] units(Polygon polygon, boolean x) {
        return polygon.points().stream()
                .mapToLong(p -> Grid.units(x ? p.x() : p.y()))
                .toArray();
    }
}
