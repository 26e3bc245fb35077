package stretchwright.draft;

import java.util.OptionalDouble;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/**
 * Both inseams under one crotch line, equally long, and the crotch points they run up to.
 *
 * @param width of the crotch line, mm
 * @param share of what the crotch line is wider than half the hip, in front
 * @param back lowered until the inseams agree: the back crotch point slides down its own inseam
 * @param lower by how much it is lowered, mm
 * @param closes whether a bearable lowering makes the inseams equal
 */
record Fork(
        double width,
        double share,
        Path front,
        Path back,
        double frontFlare,
        double backFlare,
        double lower,
        boolean closes) {
    static Fork of(LegCurves curves, double width, double share) {
        Inseam front = curves.side(-1, width, share);
        Inseam back = curves.side(1, width, share);
        Path frontPath = front.from(0);
        double length = frontPath.length();
        double backLength = back.length(0);
        if (backLength < length) {
            // only where a maker moved an edge: then the front crotch point slides down
            OptionalDouble drop = Inseams.drop(curves, front, backLength);
            frontPath = front.from(drop.orElse(0));
            length = frontPath.length();
        }
        OptionalDouble drop = Inseams.drop(curves, back, length);
        double lower = drop.orElse(Inseams.most(curves));
        Path backPath = back.from(lower);
        return new Fork(
                width,
                share,
                frontPath,
                backPath,
                front.flare(frontPath.start().y()),
                back.flare(backPath.start().y()),
                lower,
                drop.isPresent());
    }

    double steepest() {
        return Math.max(frontFlare, backFlare);
    }

    /** From crotch point to crotch point across the leg, with what a maker moved them, mm. */
    double across() {
        return backOut().x() + frontOut().x();
    }

    /** The crotch points, out from the side line and up. */
    Point frontOut() {
        return new Point(-front.start().x(), front.start().y());
    }

    Point backOut() {
        return back.start();
    }
}
