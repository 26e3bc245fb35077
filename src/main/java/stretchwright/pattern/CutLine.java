package stretchwright.pattern;

import java.util.ArrayList;
import java.util.Collections;
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
    /** Far above what is lost in a sum, mm. */
    private static final double HAIR = 1e-6;

    private static final int LONGEST_LOOP = 60;

    /** Chords that turn by less than this run on straight. */
    private static final double FLAT = 1e-9;

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
        List<Turn> turns = new ArrayList<>();
        for (int i = 0; i < chords.size(); i++) {
            Chord in = chords.get(i);
            Chord next = chords.get((i + 1) % chords.size());
            if (in.turned() == next.turned()) {
                corner(in, next, out);
            } else {
                Turn turn = Turn.at(chords, i);
                turns.add(turn);
                out.addAll(turn.points());
            }
        }
        turns.forEach(turn -> withoutSpike(turn, out));
        return new Polygon(withoutReturns(withoutRepeats(withoutLoops(withoutRepeats(withoutLoops(out))))));
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

    private static boolean isApart(double a, double b, double c, double d) {
        return Math.max(a, b) < Math.min(c, d) - HAIR || Math.max(c, d) < Math.min(a, b) - HAIR;
    }

    private static @Nullable Point crossing(Point a, Point b, Point c, Point d) {
        if (isApart(a.x(), b.x(), c.x(), d.x()) || isApart(a.y(), b.y(), c.y(), d.y())) {
            return null;
        }
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
     * @param mirror from where the seam's cut line meets the fold to the raw edge
     */
    private record Turn(Chord fold, boolean foldFirst, List<Point> mirror) {
        static Turn at(List<Chord> chords, int before) {
            int n = chords.size();
            Chord in = chords.get(before);
            Chord next = chords.get((before + 1) % n);
            boolean foldFirst = in.turned();
            Chord fold = foldFirst ? in : next;
            Point corner = in.to();
            Point along = fold.direction();
            int step = foldFirst ? 1 : -1;
            int at = foldFirst ? before + 1 : before;
            Chord seam = chords.get(at % n);
            Point beside = seam.moved(corner);
            Point down = seam.direction();
            Point atFold = beside.plus(down.times(corner.minus(beside).cross(along) / down.cross(along)));
            List<Point> out = new ArrayList<>(List.of(atFold));
            Point from = atFold;
            for (int k = 0; k < n; k++) {
                seam = chords.get(Math.floorMod(at + step * k, n));
                Chord further = chords.get(Math.floorMod(at + step * (k + 1), n));
                Point end = foldFirst ? seam.to() : seam.from();
                Point way = seam.direction().times(step);
                double bend = way.cross(further.direction());
                Point on = seam.moved(end);
                Point to = Math.abs(bend) < FLAT
                        ? on
                        : on.plus(way.times(further.moved(end).minus(on).cross(further.direction()) / bend));
                double start = away(from, corner, along);
                if (further.turned() || away(to, corner, along) >= fold.offset()) {
                    Point raw = from.plus(way.times((fold.offset() - start) / along.cross(way)));
                    out.add(mirrored(raw, corner, along));
                    break;
                }
                if (away(to, corner, along) > start) {
                    out.add(mirrored(to, corner, along));
                    from = to;
                }
            }
            return new Turn(fold, foldFirst, List.copyOf(out));
        }

        /** From the fold, on the piece's own side. */
        private static double away(Point p, Point corner, Point along) {
            return along.cross(p.minus(corner));
        }

        private static Point mirrored(Point p, Point corner, Point along) {
            return p.minus(along.left().times(2 * away(p, corner, along)));
        }

        Point atFold() {
            return mirror.get(0);
        }

        Point end() {
            return mirror.get(mirror.size() - 1);
        }

        private Point back() {
            return end().minus(atFold());
        }

        /** In the order of the outline. */
        List<Point> points() {
            List<Point> out = new ArrayList<>(mirror);
            if (foldFirst) {
                Collections.reverse(out);
            }
            return out;
        }

        /** Whether a point of the raw edge lies beyond the mirror image of the seam. */
        boolean cutsOff(Point p) {
            Point way = fold.direction().times(foldFirst ? -fold.offset() : fold.offset());
            Point kept = fold.moved(fold.from()).plus(way);
            return back().cross(p.minus(atFold())) * back().cross(kept.minus(atFold())) < 0;
        }

        /** Where the mirror image of the seam meets the line from one point to another. */
        Point between(Point from, Point to) {
            Point way = to.minus(from);
            return from.plus(way.times(atFold().minus(from).cross(back()) / way.cross(back())));
        }
    }

    /** A seam that leans far cuts off more of the raw edge than its last chord: what would stick out beyond is left out. */
    private static void withoutSpike(Turn turn, List<Point> ring) {
        int end = ring.indexOf(turn.end());
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

    /** On the grid a corner cut off by a hair goes out a step and comes back on itself. */
    private static List<Point> withoutReturns(List<Point> ring) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.get(i);
            Point in = p.minus(ring.get(Math.floorMod(i - 1, ring.size())));
            Point on = ring.get((i + 1) % ring.size()).minus(p);
            if (in.dot(on) >= 0 || Math.abs(in.cross(on)) > 1e-9) {
                out.add(p);
            }
        }
        return out;
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
