package stretchwright.draft;

import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** What a leg is drafted from. */
record Order(
        Body body,
        Fabric fabric,
        Optional<Boot> boot,
        Style style,
        Set<Machine> machines,
        Pattern.Reductions reductions,
        Holding holding) {
    static Order of(Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines) {
        double along = Reducing.along(fabric, body.seated());
        Holding holding = Holding.of(body, fabric, style, along);
        return new Order(
                body, fabric, boot, style, machines, Reducing.of(body, fabric, style, along, holding), holding);
    }

    /** On one leg of the body; hip, band and lengths stay those of the whole. */
    Order on(Body other) {
        return new Order(
                other, fabric, boot, style, machines, reductions, Holding.of(other, fabric, style, reductions.along()));
    }

    /** By how much the band's ring can stretch: as far as the cloth and the seam that joins it. */
    double bandStretch() {
        boolean casing = style.top().band().shape() == TopEnd.Band.Shape.CASING;
        return ring(casing ? Machine.forHem(machines) : Machine.forSeam(machines));
    }

    /** The same for the lower edge. */
    double hemStretch() {
        return ring(style.cuffHeight().isPresent() ? Machine.forSeam(machines) : Machine.forHem(machines));
    }

    private double ring(Stitch stitch) {
        return Math.min(fabric.stretchAcross(), stitch.extensibility());
    }

    /** Height of the leg's top edge on the flat piece, mm. */
    double waist() {
        return (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist()) * (1 - reductions.along());
    }
}
