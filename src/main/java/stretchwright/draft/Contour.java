package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/**
 * A band that follows the body: the frustum of a cone between two girths, developed.
 *
 * <p>A frustum of slant height h with girths a (below) and b (above) unrolls into a part of a ring of angle (a - b) / h
 * between the radii a h / (a - b) and b h / (a - b); elementary geometry. Half of it is drawn, centre front on the fold.
 * Where b is the larger the ring bends the other way; where they are equal it is a rectangle.
 *
 * @param lower girth of the lower edge, all round, mm
 * @param upper girth of the upper edge, all round, mm
 * @param height finished, mm
 */
record Contour(double lower, double upper, double height) implements BandFace {
    /** A chord of 4 mm on the tightest arc of a band (200 mm) leaves it by 0.01 mm. */
    private static final double CHORD = 4;

    /** Flatter than this, mm over the whole half, it is drawn as a rectangle: the radius would be beyond 100 m. */
    private static final double FLAT = 0.01;

    /** Of the half band; negative where it bends down. */
    double angle() {
        return (lower - upper) / 2 / height;
    }

    private boolean flat() {
        return Math.abs(lower - upper) < FLAT;
    }

    /** A place by the way along the lower edge from centre front and the height above it. */
    @Override
    public Point at(double along, double up) {
        if (flat()) {
            return new Point(along, up);
        }
        double radius = lower / 2 / angle();
        double turn = along / radius;
        double out = radius - up;
        return new Point(out * Math.sin(turn), radius - out * Math.cos(turn));
    }

    private Path arc(double up) {
        int chords = flat() ? 1 : Math.max(8, (int) Math.ceil(lower / 2 / CHORD));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= chords; i++) {
            points.add(at(lower / 2 * i / chords, up));
        }
        return new Path(points);
    }

    /** One layer; the outer one is the band, the inner one its facing. */
    Piece piece(PieceName name, Style style, List<Mark> marks) {
        Path below = arc(0).onGrid();
        Path above = arc(height).reversed().onGrid();
        double join = style.allowance(Seam.Role.WAISTBAND_JOIN);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, below, join),
                new Edge(
                        EdgeName.CENTRE_BACK_END,
                        Path.of(below.end(), above.start()),
                        style.allowance(Seam.Role.WAISTBAND_ENDS)),
                new Edge(EdgeName.UPPER_EDGE, above, style.allowance(Seam.Role.WAISTBAND_TOP)),
                new Edge(EdgeName.FOLD, Path.of(above.end(), below.start()), 0));
        Edge low = edges.get(0);
        Edge high = edges.get(2);
        List<Notch> notches = List.of(
                Outline.notch(NotchName.SIDE, low, low.length() / 2, Notch.Mark.SINGLE),
                Outline.notch(NotchName.SIDE, high, high.length() / 2, Notch.Mark.SINGLE),
                Outline.notch(NotchName.CENTRE_FRONT, low, 0, Notch.Mark.SINGLE),
                Outline.notch(NotchName.CENTRE_FRONT, high, high.length(), Notch.Mark.SINGLE));
        double middle = 0.55 * lower / 2;
        double upright = at(middle, 0).x();
        double from = at(middle, 0).y();
        Grain grain = new Grain(
                new Point(upright, from + 0.15 * height).onGrid(), new Point(upright, from + 0.85 * height).onGrid());
        return Piece.of(name, 1, false, true, edges, grain, notches, marks);
    }
}
