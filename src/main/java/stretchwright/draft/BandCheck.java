package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Whether the band goes with the body; says which two are at odds where it does not. */
final class BandCheck {
    /** Half a contoured band turns by at most this, in radians (75 degrees): beyond, its ends would lie side by side. */
    private static final double MOST_TURN = 1.3;

    private BandCheck() {}

    static boolean pass(Order order, Findings findings) {
        return lower(order, findings) && pocket(order, findings) && turn(order, findings);
    }

    /** A band is not taller than the rise, from the waist down to the crotch. */
    private static boolean lower(Order order, Findings findings) {
        Body body = order.body();
        Style style = order.style();
        double rise = body.mm(Measure.WAIST_HEIGHT) - body.mm(Measure.CROTCH_HEIGHT);
        if (rise <= 0 || style.bandHeight() <= rise) {
            return true;
        }
        Odds.at(
                findings,
                "style.waistband.height",
                "Choose a lower band, or measure both heights again.",
                "a band of %.0f mm is taller than the rise: from the waist down to the crotch it is %.0f mm.",
                style.bandHeight(),
                rise);
        return false;
    }

    /** A casing is cut as the mirror image of what it lies on; on too steep a waist edge that runs into itself. */
    static boolean turnsDown(Pattern pattern, Order order, Findings findings) {
        TopEnd top = order.style().top();
        if (top.band().shape() != TopEnd.Band.Shape.CASING
                || pattern.pieces().stream().noneMatch(p -> DraftCheck.crosses(p.cutLine()))) {
            return true;
        }
        Odds.at(
                findings,
                "style.waistband.shape",
                "Choose a straight band, or bring front and back waist nearer together.",
                "a casing of %.0f mm cannot be turned down on so steep a waist edge (front waist %+.0f mm, back waist %+.0f mm%s).",
                top.band().height(),
                top.frontRaise(),
                top.backRaise(),
                order.body().seated() ? ", a wearer who sits" : "");
        return false;
    }

    private static boolean pocket(Order order, Findings findings) {
        TopEnd.Band band = order.style().top().band();
        double half = Frame.band(order) / 2;
        double most = KeyPocket.widest(half);
        if (band.keyPocket().isEmpty() || band.keyPocket().getAsDouble() <= most) {
            return true;
        }
        Odds.at(
                findings,
                "style.waistband.key pocket",
                "Make it narrower.",
                "a pocket of %.0f mm is wider than the %.0f mm of the band between centre front and side that can carry it.",
                band.keyPocket().getAsDouble(),
                most);
        return false;
    }

    private static boolean turn(Order order, Findings findings) {
        if (order.style().top().band().shape() != TopEnd.Band.Shape.CONTOURED) {
            return true;
        }
        double below = Frame.topGirth(order.body(), order.style());
        double above = TopFinish.upperGirth(order);
        double angle = Math.abs(below - above)
                * (1 - order.reductions().waistband())
                / 2
                / order.style().bandHeight();
        if (angle <= MOST_TURN) {
            return true;
        }
        Odds.at(
                findings,
                "style.waistband.shape",
                "Choose a taller band, a straight one, or measure waist and hip height again.",
                "a contoured band of %.0f mm would have to grow from %.0f mm to %.0f mm: it would lie like a collar.",
                order.style().bandHeight(),
                above,
                below);
        return false;
    }
}
