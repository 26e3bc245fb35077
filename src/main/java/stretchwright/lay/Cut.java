package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Shape;
import stretchwright.pattern.Piece;

/**
 * One cutting: a piece, as it lies in one way of laying, to be cut once.
 *
 * @param copy 1, 2, ... among the cuttings of that piece
 * @param outline the cut line as it lies: the whole piece when unfolded, mirrored when mirrored
 */
record Cut(Piece piece, int copy, boolean mirrored, boolean unfolded, int layers, Polygon outline) {
    /** How far a piece may differ from its mirror image and still be cut as it: rounding to the grid, twice, mm. */
    private static final double ALIKE = 0.03;

    /** All cuttings that yield the demanded copies, where the cloth is spread in one way throughout. */
    static List<Cut> all(List<Piece> pieces, Lay.Method method) {
        List<Cut> out = new ArrayList<>();
        for (Piece piece : pieces) {
            switch (method) {
                case OPEN -> open(piece, out);
                case FOLDED, FOLDED_OFF_THE_MIDDLE -> folded(piece, out);
                case FOLDED_CROSSWISE -> crosswise(piece, out);
                case PART_FOLDED -> throw new IllegalArgumentException("part folded is spread in two ways");
            }
        }
        return out;
    }

    /** What is cut from the folded stretch of cloth that is part folded: all that goes through both layers. */
    static List<Cut> ofFoldedStretch(List<Piece> pieces, boolean withFoldPieces) {
        return all(pieces, Lay.Method.FOLDED).stream()
                .filter(c -> c.layers() == 2 && (withFoldPieces || !c.atFold()))
                .toList();
    }

    /** What is then cut from the open stretch. */
    static List<Cut> ofOpenStretch(List<Piece> pieces, boolean withFoldPieces) {
        List<Cut> out = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.onFold() && !withFoldPieces) {
                open(piece, out);
            } else {
                all(List.of(piece), Lay.Method.FOLDED).stream()
                        .filter(c -> c.layers() == 1)
                        .forEach(out::add);
            }
        }
        return out;
    }

    /** Every copy for itself on the single layer; the second half of a mirrored pair turned over. */
    private static void open(Piece piece, List<Cut> out) {
        for (int copy = 1; copy <= piece.cut(); copy++) {
            boolean mirrored = piece.mirrored() && copy > piece.cut() / 2;
            out.add(of(piece, copy, mirrored, piece.onFold(), 1));
        }
    }

    /**
     * Through both layers where that yields what is wanted: at the fold, a mirrored pair, or two of a piece that is
     * its own mirror image. What is left over is cut from the upper layer alone.
     */
    private static void folded(Piece piece, List<Cut> out) {
        boolean pairs = !piece.onFold() && (piece.mirrored() || isOwnMirrorImage(piece.cutLine()));
        int twice = piece.onFold() ? piece.cut() : pairs ? piece.cut() / 2 : 0;
        int once = piece.onFold() ? 0 : piece.cut() - (pairs ? 2 * twice : 0);
        for (int copy = 1; copy <= twice + once; copy++) {
            out.add(of(piece, copy, false, false, copy <= twice ? 2 : 1));
        }
    }

    /**
     * As folded, but no piece can lie on this fold. The lower layer's copy comes out mirrored top to bottom, which is
     * a left-to-right mirror image turned by half a turn.
     */
    private static void crosswise(Piece piece, List<Cut> out) {
        boolean pairs = piece.mirrored() || piece.onFold() || isOwnMirrorImage(piece.cutLine());
        int twice = pairs ? piece.cut() / 2 : 0;
        int once = piece.cut() - 2 * twice;
        for (int copy = 1; copy <= twice + once; copy++) {
            out.add(of(piece, copy, false, piece.onFold(), copy <= twice ? 2 : 1));
        }
    }

    private static Cut of(Piece piece, int copy, boolean mirrored, boolean unfolded, int layers) {
        Polygon line = unfolded ? Shape.unfolded(piece.cutLine()) : piece.cutLine();
        return new Cut(piece, copy, mirrored, unfolded, layers, line.placed(mirrored, 0, Point.ORIGIN));
    }

    /** Whether it lies with its own x = 0 on the fold of the cloth. */
    boolean atFold() {
        return piece.onFold() && !unfolded;
    }

    double width() {
        return outline.box().width();
    }

    long widthUnits() {
        return Grid.units(outline.box().maxX()) - Grid.units(outline.box().minX());
    }

    double grainX() {
        double x = piece.grain().from().x();
        return mirrored ? -x : x;
    }

    /** Whether the outline, mirrored left to right and moved, is the same within rounding to the grid. */
    static boolean isOwnMirrorImage(Polygon line) {
        List<Point> one = line.points();
        double shift = line.box().minX() + line.box().maxX();
        List<Point> other = line.placed(true, 0, new Point(shift, 0)).points();
        for (int start = 0; start < one.size(); start++) {
            if (sameFrom(one, other, start)) {
                return true;
            }
        }
        return false;
    }

    /** Cut through both layers one copy of it is the mirror image of the other: alike, but for rounding to the grid. */
    boolean mayComeMirrored() {
        return !piece.onFold() && !piece.mirrored() && piece.cut() > 1 && isOwnMirrorImage(piece.cutLine());
    }

    private static boolean sameFrom(List<Point> one, List<Point> other, int start) {
        for (int i = 0; i < one.size(); i++) {
            if (one.get(i).distance(other.get((i + start) % other.size())) > ALIKE) {
                return false;
            }
        }
        return true;
    }
}
