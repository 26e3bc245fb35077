package stretchwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;

/**
 * One cut of a notch: from the cut line inwards. A double notch has two, 4 mm apart.
 *
 * @param name of the notch
 * @param mark single or double
 * @param from on the cut line
 * @param to inside, short of the sew line: a tick that reached it would be a hole in the seam
 */
record Tick(NotchName name, Notch.Mark mark, Point from, Point to) {
    /** Between the two cuts of a double notch, mm; as on paper (common practice, no source). */
    static final double APART = 4;

    /** Usual depth of a cut, mm (common practice, no source). */
    private static final double DEPTH = 5;

    /** Farther than this from where it is looked for, the cut line is another side of the piece, mm. */
    private static final double NEAR = 12;

    private static final double PARALLEL = 1e-6;

    Tick {
        if (from.equals(to)) {
            throw new IllegalArgumentException("a tick of no length at " + from);
        }
    }

    /** All ticks of a piece as given; of a half piece those of the half. */
    static List<Tick> of(Piece piece) {
        List<Tick> out = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Point way = outward(piece, notch);
            Point aside = way.left().times(APART / 2);
            if (notch.mark() == Notch.Mark.SINGLE) {
                at(piece, notch, notch.at(), way).ifPresent(out::add);
            } else {
                at(piece, notch, notch.at().plus(aside), way).ifPresent(out::add);
                at(piece, notch, notch.at().minus(aside), way).ifPresent(out::add);
            }
        }
        return out;
    }

    /** Those of the whole piece that a half piece stands for; one that lies on the fold stands once. */
    static List<Tick> ofWhole(Piece piece) {
        List<Tick> out = new ArrayList<>(of(piece));
        if (piece.onFold()) {
            of(piece).stream()
                    .filter(t -> Math.abs(t.from.x()) > 1e-9)
                    .map(Tick::mirrored)
                    .forEach(out::add);
        }
        return out;
    }

    double depth() {
        return from.distance(to);
    }

    Tick mirrored() {
        return new Tick(name, mark, from.mirrored(), to.mirrored());
    }

    Tick moved(Point by) {
        return new Tick(name, mark, from.plus(by), to.plus(by));
    }

    /** A notch on the fold looks along it, whatever the edge's first chord does: both halves share it. */
    private static Point outward(Piece piece, Notch notch) {
        boolean onFold = piece.onFold() && Math.abs(notch.at().x()) < Grid.STEP;
        return onFold ? new Point(0, Math.signum(notch.outward().y())) : notch.outward();
    }

    /** Straight outwards from the sew line to the cut line; empty beside the end of a half piece. */
    private static Optional<Tick> at(Piece piece, Notch notch, Point sewn, Point way) {
        double allowance = piece.edge(notch.edge()).allowance();
        double depth = Math.min(DEPTH, Math.max(1, allowance - 1));
        return crossing(piece.cutLine(), sewn, way, allowance)
                .map(p -> new Tick(notch.name(), notch.mark(), p, p.minus(way.times(depth))));
    }

    /** Where the line from a point in a direction crosses the outline, nearest to the distance it is looked for. */
    private static Optional<Point> crossing(Polygon outline, Point start, Point way, double wanted) {
        List<Point> p = outline.points();
        double best = Double.NaN;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point side = p.get((i + 1) % p.size()).minus(a);
            double turn = way.cross(side);
            if (Math.abs(turn) < PARALLEL * side.norm()) {
                continue; // a notch on the fold looks along it
            }
            double share = a.minus(start).cross(way) / turn;
            double off = a.minus(start).cross(side) / turn;
            boolean nearer = Double.isNaN(best) || Math.abs(off - wanted) < Math.abs(best - wanted);
            if (share >= -1e-9 && share <= 1 + 1e-9 && nearer) {
                best = off;
            }
        }
        return !Double.isNaN(best) && Math.abs(best - wanted) <= NEAR
                ? Optional.of(start.plus(way.times(best)))
                : Optional.empty();
    }
}
