package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Piece;
import stretchwright.pattern.WhichLeg;

/** The levels of a leg: where they lie, and how wide the leg is drawn there. */
final class LegLevels {
    /** A level nearer to the lower edge than this is the edge, mm. */
    private static final double ABOVE_END = 1;

    private LegLevels() {}

    /** A level and its height on the flat piece, mm. */
    record At(Level.Name name, double height) {}

    /** Hip, crotch line, and what lies between it and the lower edge, from the top down. */
    static List<At> heights(Leg leg) {
        LegLine line = leg.line();
        double end = leg.curves().endHeight();
        List<At> out = new ArrayList<>();
        out.add(new At(Level.Name.HIP, leg.top().hipHeight()));
        out.add(new At(Level.Name.CROTCH, crotch(leg)));
        double midThigh = (leg.order().body().mm(Measure.CROTCH_HEIGHT)
                        + leg.order().body().mm(Measure.KNEE_HEIGHT))
                / 2
                * (1 - leg.order().reductions().along());
        if (line.leg().stream().noneMatch(n -> n.level() == Level.Name.MID_THIGH) && midThigh > end + ABOVE_END) {
            out.add(new At(Level.Name.MID_THIGH, midThigh));
        }
        List<Node> below = new ArrayList<>(line.leg());
        below.add(line.narrow());
        for (Node node : below) {
            if (node.level() != null
                    && node.level() != Level.Name.CROTCH
                    && node.level() != Level.Name.HEM
                    && node.height() > end + ABOVE_END) {
                out.add(new At(node.level(), node.height()));
            }
        }
        if (line.narrow().level() != Level.Name.BOOT_TOP) {
            line.bootTop().ifPresent(height -> out.add(new At(Level.Name.BOOT_TOP, height)));
        }
        return out;
    }

    /** Where the thigh was measured, and never above an inseam's upper end. */
    private static double crotch(Leg leg) {
        double ends = Math.min(
                leg.front().onGrid().start().y(), leg.back().onGrid().start().y());
        return Math.min(leg.line().leg().get(0).height(), ends);
    }

    /**
     * Hip, then the levels of this leg from the crotch down; the hip is the whole body's and named once.
     *
     * @param piece the leg as drawn, in one piece
     */
    static List<Level> of(Leg leg, Piece piece) {
        WhichLeg which = leg.order().leg();
        List<Level> out = new ArrayList<>();
        for (At at : heights(leg)) {
            boolean hip = at.name == Level.Name.HIP;
            Path front = piece.edge(hip ? EdgeName.FRONT_CROTCH : EdgeName.FRONT_INSEAM)
                    .line();
            Path back = piece.edge(hip ? EdgeName.BACK_CROTCH : EdgeName.BACK_INSEAM)
                    .line();
            if (!hip) {
                out.add(new Level(at.name, at.height, widthAt(front, back, at.height), which));
            } else if (which != WhichLeg.RIGHT) {
                out.add(new Level(at.name, at.height, 2 * widthAt(front, back, at.height)));
            }
        }
        if (!Cover.wanted(leg.order().style())) {
            out.add(new Level(
                    Level.Name.HEM,
                    leg.line().hemHeight(),
                    piece.edge(EdgeName.HEM).length(),
                    which));
        }
        return out;
    }

    private static double widthAt(Path front, Path back, double height) {
        Point a = front.at(front.alongAtHeight(height));
        Point b = back.at(back.alongAtHeight(height));
        return b.x() - a.x();
    }
}
