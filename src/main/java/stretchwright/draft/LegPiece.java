package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** The leg: outline from its curves, notches that meet, grain, level marks. */
final class LegPiece {
    /** Turn-up of a plain hem where no allowance was asked for (common practice, no source). */
    static final double TURN_UP = 20;

    /** The crotch notches sit at this share of the front curve's length from the crotch point. */
    private static final double CROTCH_NOTCH_SHARE = 0.35;

    /** A notch nearer to the lower edge than this would disappear in the hem. */
    private static final double NOTCH_ROOM = 15;

    private LegPiece() {}

    static Piece of(String name, int cut, boolean mirrored, Leg leg) {
        Style style = leg.order().style();
        Path front = leg.front();
        Path back = leg.back();
        Top top = leg.top();
        Path hem = Path.of(front.end(), back.end());
        double hemAllowance = style.cuffHeight().isPresent()
                ? style.allowance(Seam.Role.CUFF_JOIN)
                : style.allowances().getOrDefault(Seam.Role.HEM, TURN_UP);
        List<Edge> edges = List.of(
                new Edge("hem", hem, hemAllowance),
                new Edge("back inseam", back.reversed(), style.allowance(Seam.Role.INSEAM)),
                new Edge("back crotch", top.backCrotch().reversed(), style.allowance(Seam.Role.BACK_RISE)),
                Casing.waistEdge(top.waistEdge(), style),
                new Edge("front crotch", top.frontCrotch(), style.allowance(Seam.Role.FRONT_RISE)),
                new Edge("front inseam", front, style.allowance(Seam.Role.INSEAM)));
        List<Mark> marks = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        crotchNotches(edges, notches);
        notches.add(notch("side", edges.get(3), edges.get(3).length() / 2, Notch.Mark.SINGLE));
        notches.add(notch("centre", edges.get(0), edges.get(0).length() / 2, Notch.Mark.SINGLE));
        mark("hip", top.hipHeight(), edges.get(4), edges.get(2), marks);
        double knee = leg.order().body().mm(Measure.KNEE_HEIGHT)
                * (1 - leg.order().reductions().along());
        if (knee > leg.curves().endHeight() + NOTCH_ROOM) {
            level("knee", knee, edges, notches, marks);
        }
        if (leg.line().narrow().level() == Level.Name.BOOT_TOP) {
            level("boot top", leg.line().narrow().height(), edges, notches, marks);
        }
        double low = leg.curves().endHeight();
        double high = top.hipHeight();
        Grain grain = new Grain(
                new Point(0, low + 0.2 * (high - low)).onGrid(), new Point(0, low + 0.85 * (high - low)).onGrid());
        return Piece.of(name, cut, mirrored, false, edges, grain, notches, marks);
    }

    private static void crotchNotches(List<Edge> edges, List<Notch> notches) {
        Edge front = edges.get(4);
        Edge back = edges.get(2);
        double fromPoint = CROTCH_NOTCH_SHARE * front.length();
        notches.add(notch("front rise", front, front.length() - fromPoint, Notch.Mark.SINGLE));
        notches.add(notch("back rise", back, fromPoint, Notch.Mark.DOUBLE));
    }

    /** A level marked on both inseams at the same distance from the hem, so that the notches meet. */
    private static void level(String name, double height, List<Edge> edges, List<Notch> notches, List<Mark> marks) {
        Edge back = edges.get(1);
        Edge front = edges.get(5);
        double fromHem = front.length() - front.line().alongAtHeight(height);
        notches.add(notch(name, front, front.length() - fromHem, Notch.Mark.SINGLE));
        notches.add(notch(name, back, fromHem, Notch.Mark.SINGLE));
        mark(name, height, front, back, marks);
    }

    private static void mark(String name, double height, Edge front, Edge back, List<Mark> marks) {
        Point a = front.line().at(front.line().alongAtHeight(height));
        Point b = back.line().at(back.line().alongAtHeight(height));
        marks.add(new Mark(name, Mark.Kind.LEVEL, Path.of(a, b).onGrid()));
    }

    static Notch notch(String name, Edge edge, double along, Notch.Mark mark) {
        Point outward = edge.line().directionAt(along).left().times(-1);
        return new Notch(name, edge.name(), along, edge.line().at(along), outward, mark);
    }
}
