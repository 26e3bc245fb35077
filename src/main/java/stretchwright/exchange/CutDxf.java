package stretchwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/**
 * What a laser or a drag knife is to cut, and nothing else: every piece as often as it is cut, whole, mirrored where it
 * is, side by side. Notches lie on layers of their own, so that they can be left out or marked only.
 */
final class CutDxf {
    static final String CUT = "CUT";
    static final String NOTCH = "NOTCH";
    static final String NOTCH_DOUBLE = "NOTCH_DOUBLE";

    /** Between pieces, mm: a knife turns, a laser scorches (common practice, no source). */
    static final double GAP = 10;

    private CutDxf() {}

    private record Cut(Polygon outline, List<Tick> ticks) {
        static Cut of(Piece piece, boolean mirrored) {
            Polygon whole = Folded.whole(piece);
            List<Tick> ticks = Tick.ofWhole(piece);
            return mirrored
                    ? new Cut(
                            whole.placed(true, 0, Point.ORIGIN),
                            ticks.stream().map(Tick::mirrored).toList())
                    : new Cut(whole, ticks);
        }

        Cut moved(Point by) {
            return new Cut(
                    outline.placed(false, 0, by),
                    ticks.stream().map(t -> t.moved(by)).toList());
        }
    }

    static byte[] of(Pattern pattern) {
        List<Cut> cuts = sideBySide(pattern);
        Map<String, Integer> layers = new LinkedHashMap<>();
        layers.put("0", 7);
        layers.put(CUT, 1);
        layers.put(NOTCH, 5);
        layers.put(NOTCH_DOUBLE, 4);
        Box all = Box.around(
                cuts.stream().flatMap(c -> c.outline().points().stream()).toList());
        Tags dxf = new Tags(all, layers);
        dxf.section("BLOCKS").endSection().section("ENTITIES");
        for (Cut cut : cuts) {
            // notches first: the piece still lies fast
            cut.ticks().forEach(t -> dxf.line(t.mark() == Notch.Mark.DOUBLE ? NOTCH_DOUBLE : NOTCH, t.from(), t.to()));
            dxf.polyline(CUT, cut.outline().points(), true);
        }
        dxf.endSection();
        return dxf.finished();
    }

    private static List<Cut> sideBySide(Pattern pattern) {
        List<Cut> cuts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            for (int copy = 0; copy < piece.cut(); copy++) {
                cuts.add(Cut.of(piece, piece.mirrored() && copy % 2 == 1));
            }
        }
        List<Point> moves = Rows.moves(cuts.stream().map(c -> c.outline().box()).toList(), 0, GAP);
        List<Cut> out = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            out.add(cuts.get(i).moved(moves.get(i)));
        }
        return out;
    }
}
