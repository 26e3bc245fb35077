package stretchwright.pattern;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * The cut line: the sew line moved outwards by each edge's own allowance.
 *
 * <p>Inside an edge the offset lines of neighbouring chords are mitred. At a corner between two edges the offset
 * lines are run on to where they meet (a mitre). Where that tip would stand out farther than {@link #LONGEST_TIP}
 * times the wider allowance it is cut off square to the corner's bisector, so that a sharp corner never leaves a long
 * flap. Where one of the two edges is turned, the corner is cut as a mirror image in its fold.
 */
final class CutLine {
    /** A right angle gives 1.41; beyond 2.5 (an angle of 47 degrees) the flap only adds bulk. */
    static final double LONGEST_TIP = 2.5;

    /** Loops are local: no longer than this many points. */
    private static final int LONGEST_LOOP = 60;

    private CutLine() {}

    private record Chord(Point from, Point to, double offset, boolean turned) {
        Point direction() {
            return to.minus(from).unit();
        }

        /** Outside lies to the right of a counter-clockwise outline. */
        Point outward() {
            return direction().left().times(-1);
        }

        Point moved(Point p) {
            return p.plus(outward().times(offset));
        }
    }

    static Polygon around(List<Edge> edges) {
        List<Chord> chords = new ArrayList<>();
        for (Edge edge : edges) {
            List<Point> line = edge.line().points();
            for (int i = 1; i < line.size(); i++) {
                if (line.get(i - 1).distance(line.get(i)) >= Grid.STEP) {
                    chords.add(new Chord(line.get(i - 1), line.get(i), edge.allowance(), edge.turned()));
                }
            }
        }
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < chords.size(); i++) {
            corner(chords.get(i), chords.get((i + 1) % chords.size()), out);
        }
        for (int i = 0; i < chords.size(); i++) {
            Chord in = chords.get(i);
            Chord next = chords.get((i + 1) % chords.size());
            if (in.turned() != next.turned()) {
                withoutSpike(Turn.at(in, next), out);
            }
        }
        return new Polygon(withoutRepeats(withoutLoops(withoutRepeats(withoutLoops(out)))));
    }

    /** Where the sew line is hollow and tighter than the allowance its offset crosses itself: the loop is cut out. */
    private static List<Point> withoutLoops(List<Point> ring) {
        List<Point> out = new ArrayList<>(ring);
        for (int i = 0; i + 1 < out.size(); i++) {
            for (int j = Math.min(out.size() - 2, i + LONGEST_LOOP); j > i + 1; j--) {
                Point cross = crossing(out.get(i), out.get(i + 1), out.get(j), out.get(j + 1));
                if (cross != null) {
                    out.subList(i + 1, j + 1).clear();
                    out.add(i + 1, cross);
                    break;
                }
            }
        }
        return out;
    }

    private static @Nullable Point crossing(Point a, Point b, Point c, Point d) {
        Point r = b.minus(a);
        Point s = d.minus(c);
        double across = r.cross(s);
        if (across == 0) {
            return null;
        }
        double t = c.minus(a).cross(s) / across;
        double u = c.minus(a).cross(r) / across;
        return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? a.plus(r.times(t)) : null;
    }

    private static void corner(Chord in, Chord next, List<Point> out) {
        if (in.turned() != next.turned()) {
            turnedCorner(in, next, out);
            return;
        }
        Point a = in.moved(in.to());
        Point b = next.moved(next.from());
        Point d = in.direction();
        Point e = next.direction();
        double turn = d.cross(e);
        if (Math.abs(turn) < 1e-9) {
            out.add(a);
            if (a.distance(b) >= Grid.STEP) {
                out.add(b);
            }
            return;
        }
        Point meet = a.plus(d.times(b.minus(a).cross(e) / turn));
        double reach = LONGEST_TIP * Math.max(in.offset(), next.offset());
        if (turn < 0 || in.to().distance(meet) <= reach) {
            out.add(meet);
            return;
        }
        Point bisector = meet.minus(in.to()).unit();
        Point square = bisector.left();
        Point tip = in.to().plus(bisector.times(reach));
        out.add(a.plus(d.times(tip.minus(a).cross(square) / d.cross(square))));
        out.add(b.plus(e.times(tip.minus(b).cross(square) / e.cross(square))));
    }

    /**
     * Where an allowance is folded back onto the piece: the seam's cut line runs on to the fold and from there as its own
     * mirror image, so that the turned layer is as wide as what it lies on.
     *
     * @param atFold where the seam's cut line meets the fold
     * @param back the way on from there
     * @param end where that meets the raw edge, drawn on straight from its last chord
     */
    private record Turn(Chord fold, boolean foldFirst, Point atFold, Point back, Point end) {
        static Turn at(Chord in, Chord next) {
            Chord fold = in.turned() ? in : next;
            Chord seam = in.turned() ? next : in;
            Point corner = in.to();
            Point along = fold.direction();
            Point down = seam.direction();
            Point beside = seam.moved(corner);
            Point atFold = beside.plus(down.times(corner.minus(beside).cross(along) / down.cross(along)));
            Point back = along.times(2 * down.dot(along)).minus(down);
            Point raw = fold.moved(corner);
            Point end = atFold.plus(back.times(raw.minus(atFold).cross(along) / back.cross(along)));
            return new Turn(fold, in.turned(), atFold, back, end);
        }

        /** Whether a point of the raw edge lies beyond the mirror image of the seam. */
        boolean cutsOff(Point p) {
            Point way = fold.direction().times(foldFirst ? -fold.offset() : fold.offset());
            Point kept = fold.moved(fold.from()).plus(way);
            return back.cross(p.minus(atFold)) * back.cross(kept.minus(atFold)) < 0;
        }

        /** Where the mirror image of the seam meets the line from one point to another. */
        Point between(Point from, Point to) {
            Point way = to.minus(from);
            return from.plus(way.times(atFold.minus(from).cross(back) / way.cross(back)));
        }
    }

    private static void turnedCorner(Chord in, Chord next, List<Point> out) {
        Turn turn = Turn.at(in, next);
        out.add(turn.foldFirst ? turn.end : turn.atFold);
        out.add(turn.foldFirst ? turn.atFold : turn.end);
    }

    /** A seam that leans far cuts off more of the raw edge than its last chord: what would stick out beyond is left out. */
    private static void withoutSpike(Turn turn, List<Point> ring) {
        int end = ring.indexOf(turn.end);
        if (end < 0) {
            return; // a spike at the other end of so short an edge took it along
        }
        int step = turn.foldFirst ? -1 : 1;
        int kept = end + step;
        while (kept >= 0 && kept < ring.size() && turn.cutsOff(ring.get(kept))) {
            kept += step;
        }
        if (kept == end + step || kept < 0 || kept >= ring.size()) {
            return;
        }
        ring.set(end, turn.between(ring.get(kept), ring.get(kept - step)));
        ring.subList(Math.min(end, kept) + 1, Math.max(end, kept)).clear();
    }

    private static List<Point> withoutRepeats(List<Point> points) {
        List<Point> out = new ArrayList<>();
        for (Point p : points) {
            Point snapped = p.onGrid();
            if (out.isEmpty() || !out.get(out.size() - 1).equals(snapped)) {
                out.add(snapped);
            }
        }
        if (out.size() > 1 && out.get(0).equals(out.get(out.size() - 1))) {
            out.remove(out.size() - 1);
        }
        return out;
    }
}
