package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** The leg: outline from its curves, grain, foot notches; what else is marked on it comes from {@link LegMarks}. */
final class LegPiece {
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
        LegMarks marked = LegMarks.of(leg, edges);
        List<Notch> notches = new ArrayList<>(marked.notches());
        footNotches(style, edges.get(0), notches);
        double low = leg.curves().endHeight();
        double high = top.hipHeight();
        Grain grain = new Grain(
                new Point(0, low + 0.2 * (high - low)).onGrid(), new Point(0, low + 0.85 * (high - low)).onGrid());
        return Piece.of(name, cut, mirrored, false, edges, grain, notches, marked.marks());
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
}
