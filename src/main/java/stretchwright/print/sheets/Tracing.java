package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import stretchwright.ground.Point;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Phrases;

/**
 * A piece as points to mark with a ruler: distances from the grain line (or the fold) and from the piece's lowest row.
 *
 * <p>In: a piece and the grid. Out: points of the cut line, numbered round it, rounded to what a ruler shows. Promise:
 * the points joined by straight lines stay within 1 mm plus half the rounding step of the cut line, and it of them. The
 * line is thinned between its corners so that no chord is farther off than {@link #tolerance} (Douglas and Peucker 1973,
 * from memory); rounding a point moves it by at most 0.71 of a step.
 */
final class Tracing {
    /** Turned by more than this, the line has a corner. */
    private static final double CORNER = Math.toRadians(20);

    private static final double CHORD = 1;
    /** Half the diagonal of a rounding step is so much more than half the step. */
    private static final double DIAGONAL = Math.sqrt(0.5) - 0.5;
    /** A bow that is worth a hint, mm. */
    private static final double BOW = 0.3;

    private final Piece piece;
    private final TraceGrid grid;
    private final List<Point> outline;
    private final double line;
    private final double foot;

    /**
     * A point to mark.
     *
     * @param number round the outline, from 1; 0 for what lies on no outline
     * @param name of the notch or the line inside; empty on the outline
     * @param across from the line, negative to the left, rounded
     * @param up from the lowest row, rounded
     * @param bow of the line to the next point, to its outside positive, mm; 0 where it is straight
     */
    record Spot(int number, String name, double across, double up, double bow) {
        Point at() {
            return new Point(across, up);
        }
    }

    /** From one corner to the next: the straight distance and that along the line, mm. */
    record Check(int from, int to, double straight, double along) {}

    private Tracing(Piece piece, TraceGrid grid) {
        this.piece = piece;
        this.grid = grid;
        this.outline = piece.cutLine().points();
        this.line = piece.onFold() ? 0 : piece.grain().from().x();
        this.foot = piece.cutLine().box().minY();
    }

    static Tracing of(Piece piece, TraceGrid grid) {
        return new Tracing(piece, grid);
    }

    double tolerance() {
        return Math.max(0.2, CHORD - DIAGONAL * grid.step());
    }

    /** What distances are measured from. */
    String from() {
        return piece.onFold() ? Phrases.of("trace.from-fold") : Phrases.of("trace.from-grain");
    }

    List<Spot> spots() {
        List<Integer> kept = kept();
        List<Spot> out = new ArrayList<>();
        for (int k = 0; k < kept.size(); k++) {
            int here = kept.get(k);
            int next = kept.get((k + 1) % kept.size());
            double bow = bow(here, next);
            out.add(spot(k + 1, "", outline.get(here), Math.abs(bow) < BOW ? 0 : bow));
        }
        return out;
    }

    /** Where the notches meet the cut line. */
    List<Spot> notches() {
        return piece.notches().stream().map(this::notch).toList();
    }

    private Spot notch(Notch n) {
        double allowance = piece.edge(n.edge()).allowance();
        String plain = Phrases.said(n.name().said());
        String name = n.mark() == Notch.Mark.DOUBLE ? Phrases.of("trace.notch-double", plain) : plain;
        return spot(0, name, n.at().plus(n.outward().times(allowance)), 0);
    }

    /** A line inside the piece that the sewing needs: a fold, where something is sewn on, the middle of an eyelet. */
    record Inner(String name, List<Spot> points) {}

    /** Levels are left out: nothing is sewn by them. */
    List<Inner> inner() {
        return piece.marks().stream()
                .filter(m -> m.kind() != Mark.Kind.LEVEL)
                .map(this::inner)
                .toList();
    }

    private Inner inner(Mark mark) {
        String name = Phrases.said(mark.name().said());
        return new Inner(
                name, points(mark).stream().map(p -> spot(0, name, p, 0)).toList());
    }

    private List<Point> points(Mark mark) {
        if (mark.kind() == Mark.Kind.EYELET) {
            return List.of(mark.line().at(mark.line().length() / 2));
        }
        Coordinate[] line = mark.line().points().stream()
                .map(p -> new Coordinate(p.x(), p.y()))
                .toArray(Coordinate[]::new);
        Geometry thin = DouglasPeuckerSimplifier.simplify(new GeometryFactory().createLineString(line), tolerance());
        return Stream.of(thin.getCoordinates()).map(c -> new Point(c.x, c.y)).toList();
    }

    private Spot spot(int number, String name, Point at, double bow) {
        return new Spot(number, name, grid.rounded(at.x() - line), grid.rounded(at.y() - foot), bow);
    }

    /** Numbers of the spots that are corners, each to the next. */
    List<Check> checks() {
        List<Integer> kept = kept();
        List<Integer> corners = new ArrayList<>();
        for (int k = 0; k < kept.size(); k++) {
            if (isCorner(kept.get(k))) {
                corners.add(k);
            }
        }
        List<Check> out = new ArrayList<>();
        for (int c = 0; c < corners.size() && corners.size() > 1; c++) {
            int from = corners.get(c);
            int to = corners.get((c + 1) % corners.size());
            out.add(new Check(
                    from + 1,
                    to + 1,
                    outline.get(kept.get(from)).distance(outline.get(kept.get(to))),
                    along(kept.get(from), kept.get(to))));
        }
        return out;
    }

    private double along(int from, int to) {
        double sum = 0;
        for (int i = from; i != to; i = after(i)) {
            sum += outline.get(i).distance(outline.get(after(i)));
        }
        return sum;
    }

    private int after(int i) {
        return (i + 1) % outline.size();
    }

    private boolean isCorner(int i) {
        Point here = outline.get(i);
        Point in = here.minus(outline.get((i + outline.size() - 1) % outline.size()));
        Point out = outline.get(after(i)).minus(here);
        double turn = StrictMath.atan2(in.x() * out.y() - in.y() * out.x(), in.x() * out.x() + in.y() * out.y());
        return Math.abs(turn) > CORNER;
    }

    /** Indices of the outline that are kept, in its order, from the lowest corner on. */
    private List<Integer> kept() {
        List<Integer> anchors = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            if (isCorner(i)) {
                anchors.add(i);
            }
        }
        if (anchors.size() < 2) {
            anchors = List.of(0, outline.size() / 2);
        }
        List<Integer> kept = new ArrayList<>();
        for (int a = 0; a < anchors.size(); a++) {
            int from = anchors.get(a);
            kept.add(from);
            thin(from, anchors.get((a + 1) % anchors.size()), kept);
        }
        int lowest = 0;
        for (int k = 0; k < kept.size(); k++) {
            Comparator<Point> low = Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x);
            if (low.compare(outline.get(kept.get(k)), outline.get(kept.get(lowest))) < 0) {
                lowest = k;
            }
        }
        List<Integer> turned = new ArrayList<>(kept.subList(lowest, kept.size()));
        turned.addAll(kept.subList(0, lowest));
        return turned;
    }

    /** Adds what must be kept strictly between two points. */
    private void thin(int from, int to, List<Integer> kept) {
        int far = farthest(from, to);
        if (far >= 0 && off(from, to, far) > tolerance()) {
            thin(from, far, kept);
            kept.add(far);
            thin(far, to, kept);
        }
    }

    /** The point farthest off the chord; -1 where there is none between. */
    private int farthest(int from, int to) {
        int far = -1;
        for (int i = after(from); i != to; i = after(i)) {
            far = far < 0 || off(from, to, i) > off(from, to, far) ? i : far;
        }
        return far;
    }

    /** Distance from the chord as a segment. */
    private double off(int from, int to, int i) {
        Point a = outline.get(from);
        Point ab = outline.get(to).minus(a);
        Point ap = outline.get(i).minus(a);
        double square = ab.x() * ab.x() + ab.y() * ab.y();
        double share = square == 0 ? 0 : (ap.x() * ab.x() + ap.y() * ab.y()) / square;
        return ap.distance(ab.times(Math.max(0, Math.min(1, share))));
    }

    /** The outline runs counter-clockwise, so its outside lies to the right of a chord. */
    private double bow(int from, int to) {
        int far = farthest(from, to);
        if (far < 0) {
            return 0;
        }
        Point a = outline.get(from);
        Point chord = outline.get(to).minus(a);
        Point there = outline.get(far).minus(a);
        double right = chord.y() * there.x() - chord.x() * there.y();
        return Math.signum(right) * off(from, to, far);
    }
}
