package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.PressureSpread;

/** How far a draft may stretch the cloth for comfort's sake: so far below a limit that the fit check has no caution for it. */
final class Comfortable {
    private Comfortable() {}

    /**
     * @param limit mmHg
     * @param layers of one cloth that hold together
     * @param along share taken off the lengths, so that the pull is spread thinner
     */
    static double strain(Body body, Fabric fabric, Measure girth, double limit, double layers, double along) {
        double round = body.mm(girth);
        return new PressureSpread(AsWorn.of(fabric, 1 / (1 - along) - 1))
                .strainBelow(
                        Laplace.fromMmHg(limit),
                        Comfort.PLANNED_SPREADS,
                        round,
                        body.value(girth).spread(),
                        Laplace.kilopascals(layers * (1 - along), round));
    }
}
