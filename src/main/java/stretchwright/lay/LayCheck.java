package stretchwright.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Piece;

/**
 * Whether a lay holds, from its placements alone, in whole units of 0.01 mm: independent of the search, with which it only shares the unfolding of fold pieces.
 *
 * <p>Out: one sentence for each fault; none when no two cut lines overlap (touching is allowed), all lie inside the
 * cloth, the grain runs along the selvage, pieces on one-way cloth lie the same way up, pieces on the fold lie on it,
 * and every copy, left and right, is there once.
 */
final class LayCheck {
    /** Rounding of a width that came from inches, mm. */
    private static final double TINY = 1e-6;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final Lay lay;
    private final List<String> faults = new ArrayList<>();

    private LayCheck(List<Piece> pieces, Fabric fabric, Lay lay) {
        this.pieces = pieces;
        this.fabric = fabric;
        this.lay = lay;
    }

    static List<String> faults(List<Piece> pieces, Fabric fabric, Lay lay) {
        LayCheck check = new LayCheck(pieces, fabric, lay);
        check.cloth();
        for (Lay.Placement placement : lay.placements()) {
            check.inside(placement);
            check.grain(placement);
            check.manner(placement);
        }
        check.overlaps();
        pieces.forEach(check::demand);
        return List.copyOf(check.faults);
    }

    private void fault(String format, Object... values) {
        faults.add(String.format(Locale.ROOT, format, values));
    }

    private void cloth() {
        double width = fabric.usableWidth() / (lay.method() == Lay.Method.FOLDED ? 2 : 1);
        double spare = width - lay.fabricWidth();
        if (!(spare > -TINY && spare < Grid.STEP + TINY)) {
            fault("the lay is %.2f mm wide, the cloth %.2f mm", lay.fabricWidth(), width);
        }
        if (lay.floor() > lay.length()) {
            fault("the floor of %.2f mm lies above the length of %.2f mm", lay.floor(), lay.length());
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
                || Outline.greatest(y) > Grid.units(lay.length())) {
            fault("%s %d reaches beyond the cloth", placement.piece(), placement.copy());
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
        if (!ends.get(0).equals(ends.get(1)) || !ends.equals(said)) {
            fault(
                    "the grain of %s %d lies %s from the selvage, not %s",
                    placement.piece(), placement.copy(), ends, said);
        }
    }

    private void manner(Lay.Placement placement) {
        boolean folded = lay.method() == Lay.Method.FOLDED;
        boolean onFold = piece(placement).onFold();
        if (!(placement.rotation() == 0 || (placement.rotation() == 180 && !fabric.oneWay()))) {
            fault("%s %d is turned by %.1f degrees", placement.piece(), placement.copy(), placement.rotation());
        }
        if (placement.unfolded() != (onFold && !folded)) {
            fault("%s %d is wrongly %s", placement.piece(), placement.copy(), onFold ? "folded" : "unfolded");
        }
        if (onFold && folded && !(placement.x() == 0 && placement.rotation() == 0 && !placement.mirrored())) {
            fault("%s %d does not lie on the fold", placement.piece(), placement.copy());
        }
        if (placement.layers() < 1 || placement.layers() > (folded ? 2 : 1)) {
            fault("%s %d goes through %d layers", placement.piece(), placement.copy(), placement.layers());
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
                    fault("%s overlaps %s", named(i), named(j));
                }
            }
        }
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
                fault("%s %d lies there twice", piece.name(), placement.copy());
            }
            boolean pair = placement.layers() == 2 && !piece.onFold();
            plain += pair || !placement.mirrored() ? 1 : 0;
            turnedOver += pair || placement.mirrored() ? 1 : 0;
        }
        boolean alike = !piece.mirrored() && Cut.isOwnMirrorImage(piece.cutLine());
        boolean met = piece.mirrored()
                ? plain == turnedOver && plain + turnedOver == piece.cut()
                : plain + turnedOver == piece.cut() && (turnedOver == 0 || alike);
        if (!met) {
            fault(
                    "%s: %d as drawn and %d mirrored are cut, wanted are %d%s",
                    piece.name(), plain, turnedOver, piece.cut(), piece.mirrored() ? " in mirrored pairs" : "");
        }
    }
}
