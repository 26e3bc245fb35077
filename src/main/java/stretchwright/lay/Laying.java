package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Lays the pieces of one garment on the cloth.
 *
 * <p>In: pieces, cloth, the ways permitted. Out: the shorter of the lays found, or findings where a piece is wider
 * than the cloth in every permitted way. Promised: no two cut lines overlap, all lie inside the usable width, the
 * grain runs along the selvage, every copy is there, pieces lie the same way up on one-way cloth (LayCheck, exact on
 * the 0.01 mm grid, run on every answer); the same input gives the same lay. Pieces may touch: the room for scissors
 * is not yet kept. Method and bound: docs/maths/lay.md.
 */
public final class Laying {
    /** Corners left out while choosing among orders stand off no more than this, in units of 0.01 mm. */
    private static final double ROUGH = 50;
    /** Positions and pairs tried while choosing among orders; a fraction of a second (docs/maths/lay.md). */
    private static final long BUDGET = 150_000;
    /** Orders laid again with the true outlines. */
    private static final int KEPT = 3;

    private static final long USUAL_SEED = 1;

    private Laying() {}

    /** The shortest lay found among the permitted ways; empty, with findings, where a piece fits in none of them. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, Style.LayWay way, Findings findings) {
        return lay(pieces, fabric, way, USUAL_SEED, findings);
    }

    /** The same with a seed of the search; the same seed gives the same lay. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, Style.LayWay way, long seed, Findings findings) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to lay");
        }
        pieces.forEach(Laying::grainMustStand);
        List<Lay.Method> fitting = permitted(way).stream()
                .filter(m -> tooWide(pieces, fabric, m).isEmpty())
                .toList();
        if (fitting.isEmpty()) {
            report(pieces, fabric, way, findings);
            return Optional.empty();
        }
        double floor = fitting.stream()
                .mapToDouble(m -> Grid.mm(Floor.under(Cut.all(pieces, m), width(fabric, m))))
                .min()
                .orElseThrow();
        // the ways know nothing of each other and may be tried side by side; ties go to the first
        return fitting.parallelStream().map(m -> lay(pieces, fabric, m, floor, seed)).toList().stream()
                .min(Comparator.comparingDouble(Lay::length));
    }

    private static List<Lay.Method> permitted(Style.LayWay way) {
        return switch (way) {
            case FOLDED -> List.of(Lay.Method.FOLDED);
            case OPEN -> List.of(Lay.Method.OPEN);
            case ANY -> List.of(Lay.Method.FOLDED, Lay.Method.OPEN);
        };
    }

    /** The width of the lay in units: the whole usable width, or half of it, rounded down to the grid. */
    static long width(Fabric fabric, Lay.Method method) {
        long whole = (long) Math.floor(fabric.usableWidth() / Grid.STEP + 1e-6);
        return method == Lay.Method.OPEN ? whole : whole / 2;
    }

    private static Lay lay(List<Piece> pieces, Fabric fabric, Lay.Method method, double floor, long seed) {
        List<Cut> cuts = Cut.all(pieces, method);
        long width = width(fabric, method);
        List<Part> parts = parts(cuts, method, fabric.oneWay());
        Layout layout = shortest(parts, width, seed);
        double length = Grid.mm(layout.length());
        double area = cuts.stream().mapToDouble(c -> c.outline().area()).sum();
        Lay lay = new Lay(
                method,
                Grid.mm(width),
                length,
                Shop.metric(Shop.needed(length, fabric)),
                area / (Grid.mm(width) * length),
                floor,
                placements(cuts, layout));
        List<String> faults = LayCheck.faults(pieces, fabric, lay);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the lay does not hold: " + String.join("; ", faults));
        }
        return lay;
    }

    private static Layout shortest(List<Part> parts, long width, long seed) {
        Orders orders = new Orders(width, true, KEPT, BUDGET, () -> false, layout -> {});
        BottomLeft exact = new BottomLeft(width, false);
        return orders.search(parts, new RandomStream(seed)).stream()
                .map(found -> exact.lay(found.order(), Long.MAX_VALUE))
                .min(Comparator.comparingLong(Layout::length))
                .orElseThrow();
    }

    /** Cuttings as parts; the kind is the index of the first cutting like it. */
    private static List<Part> parts(List<Cut> cuts, Lay.Method method, boolean oneWay) {
        List<Part> out = new ArrayList<>();
        for (Cut cut : cuts) {
            int kind = 0;
            while (!cuts.get(kind).outline().equals(cut.outline())) {
                kind++;
            }
            if (out.size() > kind) {
                out.add(out.get(kind));
                continue;
            }
            List<Part.Variant> variants = new ArrayList<>();
            variants.add(Part.Variant.of(0, Shape.of(cut.outline()), ROUGH));
            if (!oneWay && !(method == Lay.Method.FOLDED && cut.atFold())) {
                variants.add(Part.Variant.of(180, Shape.of(cut.outline().placed(false, 180, Point.ORIGIN)), ROUGH));
            }
            out.add(new Part(kind, variants, cut.atFold()));
        }
        return out;
    }

    /** Gives each cutting, in order of the pieces, a place that the layout has for its kind. */
    private static List<Lay.Placement> placements(List<Cut> cuts, Layout layout) {
        List<Layout.Spot> free = new ArrayList<>(layout.spots());
        List<Lay.Placement> out = new ArrayList<>();
        for (Cut cut : cuts) {
            Layout.Spot spot = free.stream()
                    .filter(s -> cuts.get(s.part().kind()).outline().equals(cut.outline()))
                    .findFirst()
                    .orElseThrow();
            free.remove(spot);
            out.add(placement(cut, spot));
        }
        return out;
    }

    private static Lay.Placement placement(Cut cut, Layout.Spot spot) {
        double rotation = spot.part().variants().get(spot.variant()).rotation();
        long grain = Grid.units(cut.grainX()) * (rotation == 0 ? 1 : -1) + spot.x();
        return new Lay.Placement(
                cut.piece().name(),
                cut.copy(),
                Grid.mm(spot.x()),
                Grid.mm(spot.y()),
                rotation,
                cut.mirrored(),
                cut.unfolded(),
                cut.layers(),
                List.of(Grid.mm(grain), Grid.mm(grain)));
    }

    private static void grainMustStand(Piece piece) {
        if (Math.abs(piece.grain().from().x() - piece.grain().to().x()) >= Grid.STEP / 2) {
            throw new IllegalArgumentException(
                    piece.name() + ": the grain must run along y to be laid, not " + piece.grain());
        }
    }

    private static List<Cut> tooWide(List<Piece> pieces, Fabric fabric, Lay.Method method) {
        return Cut.all(pieces, method).stream()
                .filter(c -> c.copy() == 1 && c.widthUnits() > width(fabric, method))
                .toList();
    }

    private static void report(List<Piece> pieces, Fabric fabric, Style.LayWay way, Findings findings) {
        Lay.Method method = way == Style.LayWay.FOLDED ? Lay.Method.FOLDED : Lay.Method.OPEN;
        for (Cut cut : tooWide(pieces, fabric, method)) {
            boolean whole = cut.atFold();
            double width = cut.width() * (whole ? 2 : 1);
            double cloth = method == Lay.Method.FOLDED && !whole ? fabric.usableWidth() / 2 : fabric.usableWidth();
            double need = Math.ceil(method == Lay.Method.FOLDED && !whole ? 2 * width : width);
            boolean openHelps = method == Lay.Method.FOLDED && width <= fabric.usableWidth();
            String problem = String.format(
                    Locale.ROOT,
                    "%s is %.1f mm wide%s, wider than the %.1f mm of the cloth%s.",
                    cut.piece().name(),
                    width,
                    cut.piece().onFold() ? " unfolded" : "",
                    cloth,
                    method == Lay.Method.FOLDED && !whole ? " folded lengthwise" : "");
            String remedy = (openHelps ? "Lay it open (style.lay: open), or take" : "Take")
                    + String.format(Locale.ROOT, " cloth of at least %.0f mm usable width.", need);
            findings.add("fabric.usable width", problem, remedy);
        }
    }
}
