package stretchwright.draft;

import java.util.List;
import java.util.OptionalDouble;
import stretchwright.ground.Roots;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;

/** Makes the two inseams of a leg equally long. */
final class Inseams {
    /**
     * The back crotch point is lowered by at most this, mm. The survey's women of 1988 need 3 to 15
     * (docs/maths/draft.md, "The leg"); of wearers whose hip is far rounder than their thighs are long the back extension is
     * wide and its inseam steep (the most found in the surveys, widened; no source).
     */
    private static final double MOST_DROP = 120;

    /** And by at most this share of the height down to the next level, so that the curve between stays one (no source). */
    private static final double MOST_SHARE = 0.7;

    private static final Said SOURCE = Tell.said("source.leg");

    private Inseams() {}

    /**
     * How far the longer inseam's crotch point must be lowered so that it is so long, mm; empty where
     * no bearable lowering makes it so.
     */
    static OptionalDouble drop(LegCurves curves, Inseam longer, double length) {
        return Roots.between(d -> longer.length(d) - length, 0, most(curves));
    }

    /**
     * Why the inseams are as long as they are.
     *
     * @param crotch height of the front crotch point, mm
     * @param lower by how much the back crotch point lies lower, mm
     */
    static List<Reason> reasons(Order order, Piece leg, double crotch, double lower) {
        double length = leg.edge(EdgeName.FRONT_INSEAM).length();
        Ruled front = Ruled.of(
                length,
                Tell.said("rule.front-inseam"),
                SOURCE,
                Inputs.length(order.its(What.CROTCH_HEIGHT), crotch),
                Inputs.length(
                        order.its(What.LOWER_EDGE_HEIGHT),
                        leg.edge(EdgeName.HEM).line().start().y()));
        Ruled back = Ruled.of(
                leg.edge(EdgeName.BACK_INSEAM).length(),
                Tell.said("rule.back-inseam"),
                SOURCE,
                Inputs.length(order.its(What.FRONT_INSEAM_LENGTH), length),
                Inputs.rule(Tell.said("input.back-lower"), lower));
        return List.of(
                front.reason(order.its(What.FRONT_INSEAM_LENGTH)), back.reason(order.its(What.BACK_INSEAM_LENGTH)));
    }

    /** The largest bearable lowering, mm. */
    static double most(LegCurves curves) {
        return most(curves.firstInterval());
    }

    /** @param firstInterval from the crotch line down to the level below the fold, mm */
    static double most(double firstInterval) {
        return Math.min(MOST_DROP, MOST_SHARE * firstInterval);
    }
}
