package stretchwright.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Gaps;
import stretchwright.lay.nest.Outline;
import stretchwright.lay.nest.Overlap;
import stretchwright.lay.nest.Shape;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Whether a lay holds, from its placements alone, in whole units of 0.01 mm: independent of the search, with which it only shares the unfolding of fold pieces.
 *
 * <p>Out: one sentence for each fault; none when no two cut lines overlap (touching is allowed where no gap is asked for),
 * all lie inside the cloth and off its flaws, the grain runs along the selvage within its tolerance, pieces on one-way
 * cloth lie the same way up, pieces on the fold lie on it, what is cut through two layers lies where there are two, a
 * print meets at the notch asked for, and every copy, left and right, is there once.
 */
final class LayCheck {
    /** Rounding of a width that came from inches, mm. */
    private static final double TINY = 1e-6;
    /** Rounding of both ends of a grain line to the grid, in degrees times its length in mm. */
    private static final double ROUNDED = Math.toDegrees(2 * Grid.STEP);
    /** A sliver of less than this comes from rounding: 0.01 mm along an edge of 0.1 m, mm2. */
    private static final double FLECK = 1;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;
    private final Lay lay;
    private final Faults faults = new Faults();

    private LayCheck(List<Piece> pieces, Fabric fabric, LayTerms terms, Lay lay) {
        this.pieces = pieces;
        this.fabric = fabric;
        this.terms = terms;
        this.lay = lay;
    }

    /** Where pieces may touch and the grain is straight. */
    static List<String> faults(List<Piece> pieces, Fabric fabric, Lay lay) {
        return faults(pieces, fabric, LayTerms.of(Style.LayWay.ANY), lay);
    }

    static List<String> faults(List<Piece> pieces, Fabric fabric, LayTerms terms, Lay lay) {
        return found(pieces, fabric, terms, lay).stream()
                .map(Faults.Fault::words)
                .toList();
    }

    static List<Faults.Fault> found(List<Piece> pieces, Fabric fabric, LayTerms terms, Lay lay) {
        LayCheck check = new LayCheck(pieces, fabric, terms, lay);
        check.cloth();
        check.gaps();
        check.matched();
        for (Lay.Placement placement : lay.placements()) {
            check.inside(placement);
            check.grain(placement);
            check.manner(placement);
            check.layers(placement);
            check.onCloth(placement);
        }
        check.overlaps();
        pieces.forEach(check::demand);
        return check.faults.all();
    }

    private void cloth() {
        double width = switch (lay.method()) {
            case FOLDED -> fabric.roll().usableWidth() / 2;
            case FOLDED_OFF_THE_MIDDLE -> fabric.roll().usableWidth() - lay.doubled();
            case OPEN, FOLDED_CROSSWISE, PART_FOLDED -> fabric.roll().usableWidth();
        };
        if (lay.method() == Lay.Method.FOLDED_OFF_THE_MIDDLE && lay.doubled() > width + TINY) {
            faults.add("%.2f mm lie double of a spread %.2f mm wide", lay.doubled(), width);
        }
        if (lay.method() == Lay.Method.FOLDED_CROSSWISE
                && (fabric.roll().oneWay() || fabric.roll().repeatAlong() > 0)) {
            faults.add("cloth with a direction or a repeat is folded crosswise");
        }
        double spare = width - lay.fabricWidth();
        if (!(spare > -TINY && spare < Grid.STEP + TINY)) {
            faults.add("the lay is %.2f mm wide, the cloth %.2f mm", lay.fabricWidth(), width);
        }
        if (Grid.units(lay.floor()) > Grid.units(lay.length())) {
            faults.add("the floor of %.2f mm lies above the length of %.2f mm", lay.floor(), lay.length());
        }
    }

    private Piece piece(Lay.Placement placement) {
        return pieces.stream()
                .filter(p -> p.name().equals(placement.piece()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no piece " + placement.piece()));
    }

    private Polygon outline(Lay.Placement placement) {
        Polygon line = piece(placement).cutLine();
        Point move = new Point(placement.x(), placement.y());
        return (placement.unfolded() ? Shape.unfolded(line) : line)
                .placed(placement.mirrored(), placement.rotation(), move);
    }

    private static long[] units(Polygon polygon, boolean x) {
        return polygon.points().stream()
                .mapToLong(p -> Grid.units(x ? p.x() : p.y()))
                .toArray();
    }

    private void inside(Lay.Placement placement) {
        Polygon outline = outline(placement);
        long[] x = units(outline, true);
        long[] y = units(outline, false);
        if (Outline.least(x) < 0
                || Outline.greatest(x) > Grid.units(lay.fabricWidth())
                || Outline.least(y) < 0
                || Outline.greatest(y) > Grid.units(lay.spreadLength())) {
            faults.add(Trouble.Kind.BEYOND, placement, "%s %d reaches beyond the cloth");
        }
    }

    private void grain(Lay.Placement placement) {
        Piece piece = piece(placement);
        List<Long> ends = new ArrayList<>();
        for (Point end : List.of(piece.grain().from(), piece.grain().to())) {
            Point turned = (placement.mirrored() ? end.mirrored() : end).turned(placement.rotation());
            ends.add(Grid.units(turned.x()) + Grid.units(placement.x()));
        }
        List<Long> said = placement.fromSelvage().stream().map(Grid::units).toList();
        double length = piece.grain().from().distance(piece.grain().to());
        double off = Math.toDegrees(Math.asin(Math.min(1, Grid.mm(Math.abs(ends.get(0) - ends.get(1))) / length)));
        if (off > terms.tilt() + ROUNDED / length || !ends.equals(said)) {
            faults.add(
                    Trouble.Kind.TURNED, placement, "the grain of %s %d lies %s from the selvage, not %s", ends, said);
        }
    }

    /** Whether the placement lies on the stretch that is folded, or on cloth folded lengthwise throughout. */
    private boolean folded(Lay.Placement placement) {
        return switch (lay.method()) {
            case FOLDED, FOLDED_OFF_THE_MIDDLE -> true;
            case OPEN, FOLDED_CROSSWISE -> false;
            case PART_FOLDED -> placement.layers() == 2;
        };
    }

    private void manner(Lay.Placement placement) {
        boolean folded = folded(placement);
        boolean onFold = piece(placement).onFold();
        double off = placement.rotation() - 180 * Math.rint(placement.rotation() / 180);
        boolean turned = Math.abs(placement.rotation()) > 90;
        if (Math.abs(off) > terms.tilt() + TINY || turned && fabric.roll().oneWay()) {
            faults.add(Trouble.Kind.TURNED, placement, "%s %d is turned by %.1f degrees", placement.rotation());
        }
        if (placement.unfolded() != (onFold && !folded)) {
            faults.add(Trouble.Kind.OTHER, placement, "%s %d is wrongly %s", onFold ? "folded" : "unfolded");
        }
        if (onFold && folded && !(placement.x() == 0 && placement.rotation() == 0 && !placement.mirrored())) {
            faults.add(Trouble.Kind.FOLD, placement, "%s %d does not lie on the fold");
        }
    }

    /** Through two layers only where there are two, through one not across the edge of the double cloth. */
    private void layers(Lay.Placement placement) {
        Polygon outline = outline(placement);
        long[] across = units(outline, true);
        long[] along = units(outline, false);
        long doubled = Grid.units(lay.doubled());
        boolean two = placement.layers() == 2;
        boolean holds = switch (lay.method()) {
            case FOLDED, FOLDED_CROSSWISE -> placement.layers() == 1 || two;
            case OPEN -> placement.layers() == 1;
            case FOLDED_OFF_THE_MIDDLE -> two ? Outline.greatest(across) <= doubled : Outline.least(across) >= doubled;
            case PART_FOLDED ->
                two
                        ? Outline.greatest(along) <= doubled
                                && Outline.greatest(across)
                                        <= Grid.units(fabric.roll().usableWidth() / 2)
                        : Outline.least(along) >= doubled;
        };
        if (!holds) {
            faults.add(Trouble.Kind.LAYERS, placement, "%s %d goes through %d layers", placement.layers());
        }
    }

    /** Inside a remnant's outline and off the flaws, in both layers. */
    private void onCloth(Lay.Placement placement) {
        ClothShape cloth = fabric.roll().shape();
        if (cloth.whole()) {
            return;
        }
        Geometry piece = Gaps.geometry(outline(placement));
        double fold = lay.fold();
        boolean both = lay.method() == Lay.Method.FOLDED || fold > 0 && placement.layers() == 2;
        for (boolean lower : both ? new boolean[] {false, true} : new boolean[] {false}) {
            for (Polygon flaw : cloth.flaws()) {
                if (piece.intersection(Gaps.geometry(spread(flaw, lower, fold))).getArea() > FLECK) {
                    faults.add(Trouble.Kind.FLAW, placement, "%s %d lies on a flaw");
                }
            }
            if (cloth.outline().isPresent()) {
                Polygon outline = cloth.outline().get();
                double off = piece.difference(Gaps.geometry(spread(outline, lower, fold)))
                        .getArea();
                double above =
                        piece.getEnvelopeInternal().getMaxY() - outline.box().maxY();
                if (off > FLECK && above <= 0) {
                    faults.add(Trouble.Kind.REMNANT, placement, "%s %d reaches beyond the remnant");
                }
            }
        }
    }

    private static Polygon spread(Polygon onCloth, boolean lower, double fold) {
        return onCloth.placed(lower, 0, new Point(lower ? fold : -fold, 0));
    }

    private void gaps() {
        if (terms.gap() > 0) {
            List<Polygon> outlines =
                    lay.placements().stream().map(this::outline).toList();
            for (int i = 0; i < outlines.size(); i++) {
                for (int j = 0; j < i; j++) {
                    if (Gaps.nearer(outlines.get(i), outlines.get(j), terms.gap())) {
                        faults.add(
                                Trouble.Kind.NEAR,
                                both(i, j),
                                "%s is nearer to %s than %.1f mm",
                                named(i),
                                named(j),
                                terms.gap());
                    }
                }
            }
        }
    }

    private void matched() {
        if (terms.matchAt().isEmpty() || fabric.roll().repeatAlong() == 0) {
            return;
        }
        long repeat = Grid.units(fabric.roll().repeatAlong());
        Set<Long> heights = new HashSet<>();
        for (Lay.Placement placement : lay.placements()) {
            piece(placement).notches().stream()
                    .filter(n -> n.name().word().equals(terms.matchAt().get()))
                    .findFirst()
                    .ifPresent(n -> {
                        Point at = (placement.mirrored() ? n.at().mirrored() : n.at()).turned(placement.rotation());
                        heights.add(Math.floorMod(Grid.units(at.y()) + Grid.units(placement.y()), repeat));
                    });
        }
        if (heights.size() > 1) {
            faults.add(
                    Trouble.Kind.PRINT,
                    List.of(),
                    "the notch %s lies at %d heights of the print",
                    terms.matchAt().get(),
                    heights.size());
        }
    }

    private void overlaps() {
        List<Polygon> outlines = lay.placements().stream().map(this::outline).toList();
        for (int i = 0; i < outlines.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (Overlap.between(
                        units(outlines.get(i), true),
                        units(outlines.get(i), false),
                        units(outlines.get(j), true),
                        units(outlines.get(j), false))) {
                    faults.add(Trouble.Kind.OVERLAPS, both(i, j), "%s overlaps %s", named(i), named(j));
                }
            }
        }
    }

    private List<Lay.Placement> both(int i, int j) {
        return List.of(lay.placements().get(i), lay.placements().get(j));
    }

    private String named(int i) {
        return lay.placements().get(i).piece() + " " + lay.placements().get(i).copy();
    }

    private void demand(Piece piece) {
        int plain = 0;
        int turnedOver = 0;
        Set<Integer> copies = new HashSet<>();
        for (Lay.Placement placement : lay.placements()) {
            if (!placement.piece().equals(piece.name())) {
                continue;
            }
            if (!copies.add(placement.copy())) {
                faults.add("%s %d lies there twice", piece.name(), placement.copy());
            }
            boolean pair = placement.layers() == 2 && !(piece.onFold() && !placement.unfolded());
            plain += pair || !placement.mirrored() ? 1 : 0;
            turnedOver += pair || placement.mirrored() ? 1 : 0;
        }
        boolean alike = !piece.mirrored() && Cut.isOwnMirrorImage(piece.cutLine());
        boolean met = piece.mirrored()
                ? plain == turnedOver && plain + turnedOver == piece.cut()
                : plain + turnedOver == piece.cut() && (turnedOver == 0 || alike);
        if (!met) {
            faults.add(
                    "%s: %d as drawn and %d mirrored are cut, wanted are %d%s",
                    piece.name(), plain, turnedOver, piece.cut(), piece.mirrored() ? " in mirrored pairs" : "");
        }
    }
}
