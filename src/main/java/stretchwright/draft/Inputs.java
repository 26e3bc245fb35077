package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Reason.Origin;

/** What goes into rules: measures, cloth, boot, style, and other dimensions. */
final class Inputs {
    private Inputs() {}

    static Input measure(Body body, Measure measure) {
        return new Input(measure.said(), body.mm(measure), "mm", origin(body, measure));
    }

    /** A girth over what is worn in the pockets. */
    static Input padded(Body body, Measure measure, Parts parts) {
        Input plain = measure(body, measure);
        return Padded.bulge(measure, parts) > 0
                ? new Input(Tell.said("input.with-pads", measure.said()), plain.value(), "mm", plain.from())
                : plain;
    }

    static Origin origin(Body body, Measure measure) {
        return body.isGiven(measure) ? Origin.MEASURED : Origin.ESTIMATED;
    }

    static Input stretchAcross(Fabric fabric) {
        return new Input(Tell.said("input.stretch-across"), 100 * fabric.test().stretchAcross(), "%", Origin.FABRIC);
    }

    static Input stretchAlong(Fabric fabric) {
        return new Input(Tell.said("input.stretch-along"), 100 * fabric.test().stretchAlong(), "%", Origin.FABRIC);
    }

    static Input toTop(Boot boot) {
        return new Input(
                Tell.said("input.ankle-to-top"),
                boot.ankleToTop(),
                "mm",
                boot.topEstimated() ? Origin.ESTIMATED : Origin.MEASURED);
    }

    /** Taken on the boot. */
    static Input measured(Said name, double mm) {
        return new Input(name, mm, "mm", Origin.MEASURED);
    }

    /** What the boot's measures give. */
    static Input boot(Said name, double mm) {
        return new Input(name, mm, "mm", Origin.BOOT);
    }

    static Input style(Said name, double mm) {
        return new Input(name, mm, "mm", Origin.STYLE);
    }

    static Input rule(Said name, double mm) {
        return new Input(name, mm, "mm", Origin.RULE);
    }

    /** A length whose own reason goes on from there. */
    static Input length(Dimension dimension, double mm) {
        return new Input(dimension.what().said(), mm, "mm", dimension);
    }

    /** A share whose own reason goes on from there. */
    static Input share(Dimension dimension, double share) {
        return new Input(dimension.said(), 100 * share, "%", dimension);
    }
}
