package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/**
 * Cuts a drafted leg along upright lines: once along the side line for a side seam, twice for a panel.
 *
 * <p>Where the cut is shaped both its edges leave the line at the hip and curve apart as two halves of a parabola, each
 * other's mirror image, so they are equally long; the waist edge of each part is drawn anew, square to the centre seam, and
 * at the cut so that it runs on smoothly over the sewn seam.
 */
final class SideCut {
    private static final int CHORDS = 24;

    /** Shorter chords would point anywhere on the grid, mm. */
    private static final double LEAST_CHORD = 2.5;

    /** The ends of a waist edge run straight for so long, so that the corners are what they are meant to be, mm. */
    private static final double STRAIGHT_END = 4;

    /** The leg's waist and hem notches are quarter marks; nearer than this to a seam the seam itself is the mark. */
    private static final double SEAM_IS_MARK = 5;

    private final Piece leg;
    private final Style style;
    private final double hip;
    private final double taken;
    private final boolean shaped;

    private SideCut(Piece leg, Style style, double hip, double taken) {
        this.leg = leg;
        this.style = style;
        this.hip = hip;
        this.taken = taken;
        this.shaped = style.parts().sideSeam() == Parts.SideSeam.SHAPED;
    }

    /**
     * Front, (panel,) back.
     *
     * @param hip height of the flat hip line, mm
     * @param taken what each cut edge takes in at the waist, mm
     */
    static List<Piece> of(Piece leg, Style style, double hip, double taken) {
        SideCut cut = new SideCut(leg, style, hip, taken);
        List<Double> lines = lines(style.parts());
        List<Piece> out = new ArrayList<>();
        for (int i = 0; i <= lines.size(); i++) {
            out.add(cut.part(i == 0 ? null : lines.get(i - 1), i == lines.size() ? null : lines.get(i)));
        }
        return out;
    }

    /** Where the leg is cut, mm from the side line, from the front on. */
    static List<Double> lines(Parts parts) {
        if (parts.panelWidth().isPresent()) {
            double half = parts.panelWidth().getAsDouble() / 2;
            return List.of(-half, half);
        }
        return parts.cutAtSide() ? List.of(0.0) : List.of();
    }

    static Reason panel(double width) {
        return Ruled.of(
                        width,
                        Tell.said("rule.panel"),
                        Tell.said("source.parts"),
                        Inputs.style(Tell.said("input.panel-width"), width))
                .reason(Dimension.of(PieceName.of(PieceKind.SIDE_PANEL), Dimension.What.WIDTH));
    }

    /** The cut edge, upwards; to the side of the front (-1) or of the back (1). */
    private Path up(double x, int to) {
        Path hem = leg.edge(EdgeName.HEM).line();
        Path waist = leg.edge(EdgeName.WAIST_EDGE).line();
        Point low = hem.at(Outline.alongAtX(hem, x).orElseThrow());
        Point high = waist.at(Outline.alongAtX(waist, x).orElseThrow());
        List<Point> points = new ArrayList<>();
        points.add(low);
        if (!shaped) {
            points.add(high);
            return new Path(points).onGrid();
        }
        double rise = high.y() + raised() - hip;
        for (int i = 0; i <= CHORDS; i++) {
            double u = (double) i / CHORDS;
            points.add(new Point(x + to * taken * u * u, hip + rise * u));
        }
        return new Path(points).onGrid();
    }

    /**
     * How much higher the side's waist point stands than the uncut edge, mm: turned with a seam that leans in by 2 x
     * taken / rise, the waist edge falls to its old height within half the part's width (a parabola).
     */
    private double raised() {
        Path waist = leg.edge(EdgeName.WAIST_EDGE).line();
        double rise = waist.at(Outline.alongAtX(waist, 0).orElseThrow()).y() - hip;
        return taken * waist.length() / (4 * rise);
    }

    private Piece part(@Nullable Double from, @Nullable Double to) {
        Path front = from == null ? null : up(from, 1);
        Path back = to == null ? null : up(to, -1);
        List<Edge> edges = new ArrayList<>();
        for (Edge e : leg.edges()) {
            boolean ofFront = isFront(e.name());
            switch (e.name()) {
                case HEM -> {
                    Path line = between(e.line(), from, to);
                    Point start = front == null ? line.start() : front.start();
                    Point end = back == null ? line.end() : back.start();
                    edges.add(new Edge(e.name(), ends(line, start, end), e.allowance(), e.turned()));
                    if (back != null) {
                        edges.add(new Edge(front == null ? EdgeName.SIDE_EDGE : EdgeName.BACK_EDGE, back, seam()));
                    }
                }
                case WAIST_EDGE -> {
                    edges.add(new Edge(e.name(), waist(e.line(), back, front, from, to), e.allowance(), e.turned()));
                    if (front != null) {
                        edges.add(new Edge(
                                back == null ? EdgeName.SIDE_EDGE : EdgeName.FRONT_EDGE, front.reversed(), seam()));
                    }
                }
                default -> {
                    if (ofFront ? front == null : back == null) {
                        edges.add(e);
                    }
                }
            }
        }
        PieceKind kind = front == null ? PieceKind.FRONT_LEG : back == null ? PieceKind.BACK_LEG : PieceKind.SIDE_PANEL;
        List<Mark> marks = new ArrayList<>(Outline.levels(leg.marks(), edges));
        leg.marks().stream().filter(m -> ownOf(m, from, to)).forEach(marks::add);
        Piece part = Piece.of(
                leg.name().with(kind),
                leg.cut(),
                leg.mirrored(),
                false,
                edges,
                Outline.grain(leg.grain(), edges),
                notches(edges),
                marks);
        return Casing.lined(Darts.cutAcross(part), style);
    }

    private static boolean isFront(EdgeName edge) {
        return switch (edge) {
            case FRONT_CROTCH, FRONT_INSEAM, FRONT_GUSSET_EDGE -> true;
            default -> false;
        };
    }

    /** A mark that lies on this part and does not follow the waist edge: the fold of a dart, the eyelet of a cord. */
    private static boolean ownOf(Mark mark, @Nullable Double from, @Nullable Double to) {
        return mark.kind() != Mark.Kind.LEVEL
                && !Casing.follows(mark)
                && mark.line().points().stream()
                        .allMatch(p -> (from == null || p.x() > from) && (to == null || p.x() < to));
    }

    private double seam() {
        return style.allowance(style.parts().panelWidth().isPresent() ? Seam.Role.PANEL : Seam.Role.SIDE_SEAM);
    }

    /** Of a path that crosses the leg, what lies between two upright lines. */
    private static Path between(Path path, @Nullable Double from, @Nullable Double to) {
        boolean rightwards = path.end().x() > path.start().x();
        Path line = rightwards ? path : path.reversed();
        if (to != null) {
            line = Outline.before(line, Outline.alongAtX(line, to).orElseThrow());
        }
        if (from != null) {
            line = Outline.after(line, Outline.alongAtX(line, from).orElseThrow());
        }
        return rightwards ? line : line.reversed();
    }

    /** The same path with its ends moved onto the grid points of its neighbours. */
    private static Path ends(Path path, Point start, Point end) {
        List<Point> points = new ArrayList<>(path.points());
        points.set(0, start);
        points.set(points.size() - 1, end);
        return new Path(points);
    }

    /** The waist edge of a part, from its back end to its front end. */
    private Path waist(
            Path whole, @Nullable Path back, @Nullable Path front, @Nullable Double from, @Nullable Double to) {
        Point start = back == null ? whole.start() : back.end();
        Point end = front == null ? whole.end() : front.end();
        if (!shaped) {
            return ends(between(whole, from, to), start, end);
        }
        Point leave = back == null || to == null ? whole.directionAt(0) : turned(whole, to, back);
        Point arrive = front == null || from == null ? whole.directionAt(whole.length()) : turned(whole, from, front);
        double straight = Math.min(STRAIGHT_END, start.distance(end) / 8);
        Point first = start.plus(leave.times(straight));
        Point last = end.minus(arrive.times(straight));
        double reach = first.distance(last) / 3;
        Point one = first.plus(leave.times(reach));
        Point two = last.minus(arrive.times(reach));
        List<Point> points = new ArrayList<>();
        points.add(start);
        int chords = (int) Math.max(6, Math.min(CHORDS, first.distance(last) / LEAST_CHORD));
        for (int i = 0; i <= chords; i++) {
            points.add(Cubic.at(first, one, two, last, (double) i / chords));
        }
        points.add(end);
        return ends(new Path(points), start, end);
    }

    /** The uncut edge's direction at a cut, turned as far as the cut edge leans: both corners together stay a straight line. */
    private static Point turned(Path whole, double x, Path side) {
        Point was = whole.directionAt(Outline.alongAtX(whole, x).orElseThrow());
        Point up = side.directionAt(side.length());
        return new Point(was.x() * up.y() + was.y() * up.x(), was.y() * up.y() - was.x() * up.x());
    }

    private List<Notch> notches(List<Edge> edges) {
        List<Notch> out = new ArrayList<>();
        for (Notch n : leg.notches()) {
            if (n.edge() == EdgeName.HEM) {
                quarter(n, Outline.edge(edges, EdgeName.HEM), out);
            } else if (n.edge() != EdgeName.WAIST_EDGE && edges.stream().anyMatch(e -> e.name() == n.edge())) {
                out.add(n);
            }
        }
        for (Edge edge : edges) {
            if (edge.name() == EdgeName.SIDE_EDGE
                    || edge.name() == EdgeName.BACK_EDGE
                    || edge.name() == EdgeName.FRONT_EDGE) {
                out.addAll(Walk.besideInseam(leg, edge));
            }
        }
        return out;
    }

    /** A quarter mark of the whole edge where it falls on this part of it. */
    private static void quarter(Notch n, Edge part, List<Notch> out) {
        double along = Outline.alongAtX(part.line(), n.at().x()).orElse(-1.0);
        if (along > SEAM_IS_MARK && along < part.length() - SEAM_IS_MARK) {
            out.add(Outline.notch(n.name(), part, along, n.mark()));
        }
    }

    /** The side notch of the waist edge: half of all parts' length from centre back, on the part it falls on. */
    static List<Piece> withSideNotch(List<Piece> parts) {
        double left = parts.stream()
                        .mapToDouble(p -> p.edge(EdgeName.WAIST_EDGE).length())
                        .sum()
                / 2;
        List<Piece> out = new ArrayList<>();
        for (int i = parts.size() - 1; i >= 0; i--) {
            Piece part = parts.get(i);
            Edge edge = part.edge(EdgeName.WAIST_EDGE);
            List<Notch> notches = new ArrayList<>(part.notches());
            if (left > SEAM_IS_MARK && left < edge.length() - SEAM_IS_MARK) {
                notches.add(Outline.notch(NotchName.SIDE, edge, left, Notch.Mark.SINGLE));
            }
            left -= edge.length();
            out.add(0, part.with(notches, part.marks()));
        }
        return out;
    }
}
