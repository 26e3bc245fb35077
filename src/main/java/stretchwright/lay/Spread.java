package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.lay.nest.Across;
import stretchwright.lay.nest.Beat;
import stretchwright.lay.nest.Grown;
import stretchwright.lay.nest.Layout;
import stretchwright.lay.nest.Part;
import stretchwright.lay.nest.Shape;
import stretchwright.lay.nest.Strip;
import stretchwright.pattern.LayTerms;

/**
 * One stretch of cloth as it is spread to be cut: the cuttings from it, and the parts and the strip that the search
 * works with.
 *
 * <p>Parts are the cuttings grown by half the gap, and the strip is wider by half the gap on either side, so that parts
 * that touch leave the gap between pieces. The strip's x and y are the cloth's plus half the gap.
 */
final class Spread {
    /** Corners left out while choosing among orders stand off no more than this, in units of 0.01 mm. */
    private static final double ROUGH = 50;

    final Lay.Method method;
    /** Units across that lie double; the whole width where the method says so. */
    final long doubled;

    final long width;
    final List<Cut> cuts;
    final List<Part> parts;
    final Strip strip;
    private final long margin;
    /** Worked out when first asked for. */
    private long floor = -1;

    private final Fabric fabric;
    private final LayTerms terms;

    private Spread(Lay.Method method, long doubled, List<Cut> cuts, Fabric fabric, LayTerms terms) {
        this(method, doubled, cuts, List.of(), fabric, terms);
    }

    private Spread(Lay.Method method, long doubled, List<Cut> cuts, List<Shape> still, Fabric fabric, LayTerms terms) {
        this.method = method;
        this.doubled = doubled;
        this.cuts = List.copyOf(cuts);
        this.width = width(fabric, method, doubled);
        this.fabric = fabric;
        this.terms = terms;
        this.margin = Grid.units(Grown.margin(terms.gap()));
        List<Shape> taken = new ArrayList<>(Taken.on(fabric, method, doubled, margin));
        taken.addAll(still);
        this.strip = new Strip(width + 2 * margin, taken);
        this.parts = parts();
    }

    /** The same stretch with the grain allowed to stand off the selvage. */
    Spread tilted(double degrees) {
        return new Spread(method, doubled, cuts, fabric, terms.tilt(degrees));
    }

    /**
     * The same stretch with only these cuttings to be laid, round others that stay where they are.
     *
     * @param foot where the stretch begins along the lay, mm
     */
    Spread around(List<Cut> moving, List<Cut> still, List<Lay.Placement> placements, double foot) {
        List<Shape> taken = new ArrayList<>();
        for (int i = 0; i < still.size(); i++) {
            Lay.Placement p = placements.get(i);
            Point at = new Point(Grid.mm(across(p.x())), Grid.mm(along(p.y() - foot)));
            taken.add(Grown.by(still.get(i).outline().placed(false, p.rotation(), at), terms.gap()));
        }
        return new Spread(method, doubled, moving, taken, fabric, terms);
    }

    /** A place across the cloth as the search's strip has it, in units. */
    long across(double x) {
        return Grid.units(x) + margin;
    }

    /** The same along it, from where the stretch begins. */
    long along(double y) {
        return Grid.units(y) + margin;
    }

    static Spread of(Lay.Method method, List<Cut> cuts, Fabric fabric, LayTerms terms) {
        return new Spread(method, 0, cuts, fabric, terms);
    }

    /** Folded lengthwise so that so much lies double. */
    static Spread offTheMiddle(long doubled, List<Cut> cuts, Fabric fabric, LayTerms terms) {
        return new Spread(Lay.Method.FOLDED_OFF_THE_MIDDLE, doubled, cuts, fabric, terms);
    }

    /** The usable width in units, rounded down to the grid. */
    static long whole(Fabric fabric) {
        return (long) Math.floor(fabric.roll().usableWidth() / Grid.STEP + 1e-6);
    }

    private static long width(Fabric fabric, Lay.Method method, long doubled) {
        return switch (method) {
            case FOLDED -> whole(fabric) / 2;
            case FOLDED_OFF_THE_MIDDLE -> whole(fabric) - doubled;
            default -> whole(fabric);
        };
    }

    /** The first cutting of each piece that has no place across. */
    List<Cut> tooWide() {
        List<Cut> out = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            Part part = parts.get(i);
            Cut cut = cuts.get(i);
            boolean named = out.stream()
                    .anyMatch(c -> c.piece().name().equals(cut.piece().name()));
            if (!named && part.variants().stream().noneMatch(v -> part.across().holds(v.exact()))) {
                out.add(cut);
            }
        }
        return out;
    }

    /** The cuttings in the places that a layout of the parts has for them, in their order; y from this height on. */
    List<Lay.Placement> placements(Layout layout, double from) {
        List<Layout.Spot> free = new ArrayList<>(layout.spots());
        List<Lay.Placement> out = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            int kind = parts.get(i).kind();
            Layout.Spot spot = free.stream()
                    .filter(s -> s.part().kind() == kind)
                    .findFirst()
                    .orElseThrow();
            free.remove(spot);
            out.add(placement(cuts.get(i), spot, from));
        }
        return out;
    }

    /** What a layout needs of this stretch along the cloth, mm. */
    double length(Layout layout) {
        return Grid.mm(layout.length() - 2 * margin);
    }

    /** The length of a layout that needs so much of this stretch along the cloth, in units of the strip. */
    long units(double length) {
        return Grid.units(length) + 2 * margin;
    }

    /** Between pieces, mm. */
    double gap() {
        return 2 * Grid.mm(margin);
    }

    /** No layout is shorter, in units of the strip: by sections alone, which know nothing of gaps, flaws and places across. */
    long floor() {
        return floorOfCuts() + 2 * margin;
    }

    /** The same in units of the cloth. */
    synchronized long floorOfCuts() {
        if (floor < 0) {
            floor = Floor.under(cuts, width, terms.tilt());
        }
        return floor;
    }

    private Lay.Placement placement(Cut cut, Layout.Spot spot, double from) {
        double rotation = spot.rotation();
        double x = Grid.mm(spot.x() - margin);
        return new Lay.Placement(
                cut.piece().name(),
                cut.copy(),
                x,
                Grid.mm(spot.y() - margin) + from,
                rotation,
                cut.mirrored(),
                cut.unfolded(),
                cut.layers(),
                List.of(
                        grainAt(cut, cut.piece().grain().from(), rotation, x),
                        grainAt(cut, cut.piece().grain().to(), rotation, x)));
    }

    private static double grainAt(Cut cut, Point end, double rotation, double x) {
        Point turned = (cut.mirrored() ? end.mirrored() : end).turned(rotation);
        return Grid.mm(Grid.units(turned.x()) + Grid.units(x));
    }

    /** Cuttings as parts; the kind is the index of the first cutting like it. */
    private List<Part> parts() {
        List<Part> out = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            int kind = 0;
            while (!alike(cuts.get(kind), cuts.get(i))) {
                kind++;
            }
            out.add(kind < i ? out.get(kind) : part(kind));
        }
        return out;
    }

    private boolean alike(Cut one, Cut other) {
        return one.outline().equals(other.outline())
                && one.layers() == other.layers()
                && beat(one, 0).equals(beat(other, 0));
    }

    private Part part(int kind) {
        Cut cut = cuts.get(kind);
        Across across = across(cut);
        List<Part.Variant> variants = new ArrayList<>();
        for (double rotation : rotations(cut)) {
            Shape shape = Grown.by(cut.outline().placed(false, rotation, Point.ORIGIN), terms.gap());
            if (across.holds(shape) || variants.isEmpty()) {
                variants.add(Part.Variant.of(rotation, shape, ROUGH, beat(cut, rotation)));
            }
        }
        return new Part(kind, variants, across);
    }

    private Across across(Cut cut) {
        boolean half = method == Lay.Method.FOLDED_OFF_THE_MIDDLE;
        long least = half && cut.layers() == 1 ? doubled : 0;
        long most = (half && cut.layers() == 2 ? doubled : width) + 2 * margin;
        return cut.atFold() ? Across.atFold(margin, most) : Across.between(least, most);
    }

    private List<Double> rotations(Cut cut) {
        List<Double> out = new ArrayList<>(List.of(0.0));
        if (!cut.atFold()) {
            if (!fabric.roll().oneWay()) {
                out.add(180.0);
            }
            for (double turn : List.copyOf(out)) {
                for (double share = -1; share <= 1 && terms.tilt() > 0; share += 0.5) {
                    if (share != 0) {
                        out.add(turn + share * terms.tilt());
                    }
                }
            }
        }
        return out;
    }

    /** The print repeats along the cloth: the marked notch lies at the same height of it on every piece that has it. */
    private Beat beat(Cut cut, double rotation) {
        long repeat = Grid.units(fabric.roll().repeatAlong());
        return terms.matchAt()
                .filter(name -> repeat > 0)
                .flatMap(name -> cut.piece().notches().stream()
                        .filter(n -> n.name().word().equals(name))
                        .findFirst())
                .map(n -> new Beat(
                        Math.floorMod(
                                -Grid.units((cut.mirrored() ? n.at().mirrored() : n.at())
                                        .turned(rotation)
                                        .y()),
                                repeat),
                        repeat))
                .orElse(Beat.FREE);
    }
}
