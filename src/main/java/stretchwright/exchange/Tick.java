package stretchwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;

/**
 * One cut of a notch: from the cut line inwards. A double notch has two, 4 mm apart.
 *
 * @param name of the notch
 * @param mark single or double
 * @param from on the cut line
 * @param to inside, short of the sew line: a tick that reached it would be a hole in the seam
 */
record Tick(String name, Notch.Mark mark, Point from, Point to) {
    /** Between the two cuts of a double notch, mm; as on paper (common practice, no source). */
    static final double APART = 4;

    /** Usual depth of a cut, mm (common practice, no source). */
    private static final double DEPTH = 5;

    /** Farther than this from where it is looked for, the cut line is another side of the piece, mm. */
    private static final double NEAR = 12;

    Tick {
        if (from.equals(to)) {
            throw new IllegalArgumentException("a tick of no length at " + from);
        }
    }

    /** All ticks of a piece as given; of a half piece those of the half. */
    static List<Tick> of(Piece piece) {
        List<Tick> out = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Point aside = notch.outward().left().times(APART / 2);
            if (notch.mark() == Notch.Mark.SINGLE) {
                at(piece, notch, notch.at()).ifPresent(out::add);
            } else {
                at(piece, notch, notch.at().plus(aside)).ifPresent(out::add);
                at(piece, notch, notch.at().minus(aside)).ifPresent(out::add);
            }
        }
        return out;
    }

    /** Those of the whole piece that a half piece stands for; one that lies on the fold stands once. */
    static List<Tick> ofWhole(Piece piece) {
        List<Tick> out = new ArrayList<>(of(piece));
        if (piece.onFold()) {
            of(piece).stream().filter(t -> t.from.x() != 0).map(Tick::mirrored).forEach(out::add);
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

    /** Straight outwards from the sew line to the cut line; empty beside the end of a half piece. */
    private static Optional<Tick> at(Piece piece, Notch notch, Point sewn) {
        double allowance = piece.edge(notch.edge()).allowance();
        double depth = Math.min(DEPTH, Math.max(1, allowance - 1));
        return crossing(piece.cutLine(), sewn, notch.outward(), allowance)
                .map(p -> new Tick(notch.name(), notch.mark(), p, p.minus(notch.outward().times(depth))));
    }

    /** Where the line from a point in a direction crosses the outline, nearest to the distance it is looked for. */
    private static Optional<Point> crossing(Polygon outline, Point start, Point way, double wanted) {
        List<Point> p = outline.points();
        double best = Double.NaN;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point side = p.get((i + 1) % p.size()).minus(a);
            double turn = way.cross(side);
            double share = turn == 0 ? -1 : a.minus(start).cross(way) / turn;
            double off = turn == 0 ? 0 : a.minus(start).cross(side) / turn;
            boolean nearer = Double.isNaN(best) || Math.abs(off - wanted) < Math.abs(best - wanted);
            if (share >= 0 && share <= 1 && nearer) {
                best = off;
            }
        }
        return Math.abs(best - wanted) <= NEAR ? Optional.of(start.plus(way.times(best))) : Optional.empty();
    }
}
