package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** The leg: outline from its curves, notches that meet, grain, level marks. */
final class LegPiece {
    /** The crotch notches sit at this share of the front curve's length from the crotch point (common practice). */
    private static final double CROTCH_NOTCH_SHARE = 0.35;

    /** A notch nearer to the lower edge than this, mm, would disappear in the hem (common practice, no source). */
    private static final double NOTCH_ROOM = 15;

    /** The line to lengthen or shorten at keeps this far from levels and lower edge, mm (common practice). */
    private static final double CHANGE_ROOM = 40;

    private LegPiece() {}

    static Piece of(PieceName name, int cut, boolean mirrored, Leg leg) {
        Style style = leg.order().style();
        Path front = leg.front();
        Path back = leg.back();
        Top top = leg.top();
        Path hem = HemLine.of(leg.order()).between(front.end(), back.end());
        double hemAllowance = hemAllowance(style);
        List<Edge> edges = List.of(
                new Edge(EdgeName.HEM, hem, hemAllowance, isTurned(style)),
                new Edge(EdgeName.BACK_INSEAM, back.reversed(), style.allowance(Seam.Role.INSEAM)),
                new Edge(EdgeName.BACK_CROTCH, top.backCrotch().reversed(), style.allowance(Seam.Role.BACK_RISE)),
                Casing.waistEdge(top.waistEdge(), style),
                new Edge(EdgeName.FRONT_CROTCH, top.frontCrotch(), style.allowance(Seam.Role.FRONT_RISE)),
                new Edge(EdgeName.FRONT_INSEAM, front, style.allowance(Seam.Role.INSEAM)));
        List<Mark> marks = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        crotchNotches(edges, notches);
        notches.add(Outline.notch(NotchName.SIDE, edges.get(3), edges.get(3).length() / 2, Notch.Mark.SINGLE));
        notches.add(Outline.notch(NotchName.CENTRE, edges.get(0), edges.get(0).length() / 2, Notch.Mark.SINGLE));
        mark(MarkName.HIP, top.hipHeight(), edges.get(4), edges.get(2), marks);
        double knee = leg.order().body().mm(Measure.KNEE_HEIGHT)
                * (1 - leg.order().reductions().along());
        if (knee > leg.curves().endHeight() + NOTCH_ROOM) {
            level(NotchName.KNEE, MarkName.KNEE, knee, edges, notches, marks);
        }
        leg.line()
                .bootTop()
                .ifPresent(height -> level(NotchName.BOOT_TOP, MarkName.BOOT_TOP, height, edges, notches, marks));
        footNotches(style, edges.get(0), notches);
        change(leg, knee, edges, marks);
        double low = leg.curves().endHeight();
        double high = top.hipHeight();
        Grain grain = new Grain(
                new Point(0, low + 0.2 * (high - low)).onGrid(), new Point(0, low + 0.85 * (high - low)).onGrid());
        return Piece.of(name, cut, mirrored, false, edges, grain, notches, marks);
    }

    /** A hem that is turned up is cut as the mirror image of what it lies on. */
    private static boolean isTurned(Style style) {
        return style.cuffHeight().isEmpty() && !Cover.wanted(style);
    }

    private static double hemAllowance(Style style) {
        if (style.cuffHeight().isPresent()) {
            return style.allowance(Seam.Role.CUFF_JOIN);
        }
        return Cover.wanted(style) ? style.allowance(Seam.Role.COVER_JOIN) : style.hemAllowance();
    }

    /** The foot points to the front: instep and heel lie halfway between inseam and side line. */
    private static void footNotches(Style style, Edge hem, List<Notch> notches) {
        if (style.lower().hemDrop() == 0 && !Cover.wanted(style)) {
            return;
        }
        double quarter = hem.line().end().x() - hem.line().start().x();
        double first = alongAt(hem.line(), hem.line().start().x() + quarter / 4);
        notches.add(Outline.notch(NotchName.INSTEP, hem, first, Notch.Mark.SINGLE));
        notches.add(Outline.notch(NotchName.HEEL, hem, hem.length() - first, Notch.Mark.DOUBLE));
    }

    private static double alongAt(Path line, double x) {
        double along = 0;
        List<Point> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (b.x() >= x) {
                return along + a.distance(b) * (x - a.x()) / (b.x() - a.x());
            }
            along += a.distance(b);
        }
        return along;
    }

    /** Where the leg is cut through to be made longer or shorter: midway between knee and what comes below it. */
    private static void change(Leg leg, double knee, List<Edge> edges, List<Mark> marks) {
        double below = leg.line().bootTop().orElse(leg.curves().endHeight());
        double height = (knee + below) / 2;
        if (knee - height > CHANGE_ROOM) {
            mark(MarkName.LENGTHEN_OR_SHORTEN_HERE, height, edges.get(5), edges.get(1), marks);
        }
    }

    private static void crotchNotches(List<Edge> edges, List<Notch> notches) {
        Edge front = edges.get(4);
        Edge back = edges.get(2);
        double fromPoint = CROTCH_NOTCH_SHARE * front.length();
        notches.add(Outline.notch(NotchName.FRONT_RISE, front, front.length() - fromPoint, Notch.Mark.SINGLE));
        notches.add(Outline.notch(NotchName.BACK_RISE, back, fromPoint, Notch.Mark.DOUBLE));
    }

    /** A level marked on both inseams at the same distance from the hem, so that the notches meet. */
    private static void level(
            NotchName name, MarkName mark, double height, List<Edge> edges, List<Notch> notches, List<Mark> marks) {
        Edge back = edges.get(1);
        Edge front = edges.get(5);
        double fromHem = front.length() - front.line().alongAtHeight(height);
        notches.add(Outline.notch(name, front, front.length() - fromHem, Notch.Mark.SINGLE));
        notches.add(Outline.notch(name, back, fromHem, Notch.Mark.SINGLE));
        mark(mark, height, front, back, marks);
    }

    private static void mark(MarkName name, double height, Edge front, Edge back, List<Mark> marks) {
        Point a = front.line().at(front.line().alongAtHeight(height));
        Point b = back.line().at(back.line().alongAtHeight(height));
        marks.add(new Mark(name, Mark.Kind.LEVEL, Path.of(a, b).onGrid()));
    }
}
