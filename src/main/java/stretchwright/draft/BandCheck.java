package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
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
        findings.add(
                "style.waistband.height",
                Tell.said("band.tall", Part.length(style.bandHeight()), Part.length(rise)),
                Tell.said("band.tall-help"));
        return false;
    }

    /** A casing is cut as the mirror image of what it lies on; on too steep a waist edge that runs into itself. */
    static boolean turnsDown(Pattern pattern, Order order, Findings findings) {
        TopEnd top = order.style().top();
        if (top.band().shape() != TopEnd.Band.Shape.CASING
                || pattern.pieces().stream().noneMatch(p -> DraftCheck.crosses(p.cutLine()))) {
            return true;
        }
        Part front = Part.signed(top.frontRaise());
        Part back = Part.signed(top.backRaise());
        Part height = Part.length(top.band().height());
        findings.add(
                "style.waistband.shape",
                order.body().seated()
                        ? Tell.said("band.casing-steep-seated", height, front, back)
                        : Tell.said("band.casing-steep", height, front, back),
                Tell.said("band.casing-steep-help"));
        return false;
    }

    private static boolean pocket(Order order, Findings findings) {
        TopEnd.Band band = order.style().top().band();
        double half = Frame.band(order) / 2;
        double most = KeyPocket.widest(half);
        if (band.keyPocket().isEmpty() || band.keyPocket().getAsDouble() <= most) {
            return true;
        }
        findings.add(
                "style.waistband.key pocket",
                Tell.said("band.pocket", Part.length(band.keyPocket().getAsDouble()), Part.length(most)),
                Tell.said("band.pocket-help"));
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
        findings.add(
                "style.waistband.shape",
                Tell.said(
                        "band.collar", Part.length(order.style().bandHeight()), Part.length(above), Part.length(below)),
                Tell.said("band.collar-help"));
        return false;
    }
}
