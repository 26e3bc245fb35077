package stretchwright.draft;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Stance;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.WhichLeg;

/**
 * What a leg is drafted from.
 *
 * @param moves what was moved beside the measures
 * @param stay what keeps top and hem at their places
 * @param leg which one
 */
record Order(
        Body body,
        Fabric fabric,
        Optional<Boot> boot,
        Style style,
        Set<Machine> machines,
        Reducing reducing,
        Holding holding,
        Moves moves,
        Stay stay,
        WhichLeg leg) {
    static Order of(Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines) {
        return of(body, fabric, boot, style, machines, Stay.AS_USUAL);
    }

    static Order of(Body body, Fabric fabric, Optional<Boot> boot, Style asked, Set<Machine> machines, Stay stay) {
        Style style = stay.in(asked);
        Ruled along = stay.eased(Reducing.along(fabric, body.seated()));
        Holding holding = Holding.of(body, fabric, style, along.value(), WhichLeg.BOTH);
        Reducing reducing = Reducing.of(body, fabric, along, holding, stay.firm());
        Moves moves = Moves.of(body, style);
        return new Order(body, fabric, boot, style, machines, reducing, holding, moves, stay, WhichLeg.BOTH);
    }

    /** Without what makers move, raise and cut apart, and standing: by this is found what keeps a top at its place. */
    Order bare() {
        Stance stance = body.stance();
        Body upright = new Body(
                body.figure(),
                body.age(),
                new Stance(false, stance.frontWaist(), stance.backWaist(), Map.of()),
                body.values(),
                body.legs());
        Style plain = style.with(Shifts.NONE).with(Parts.PLAIN).with(style.top().raised(0, 0));
        return of(upright, fabric, boot, plain, machines, stay);
    }

    /** The same wearer and style, drawn to stay otherwise. */
    Order with(Stay other) {
        return of(body, fabric, boot, style, machines, other);
    }

    /** On one leg of the body; hip, band and lengths stay those of the whole. */
    Order on(Body other, WhichLeg which) {
        return new Order(
                other,
                fabric,
                boot,
                style,
                machines,
                reducing,
                Holding.of(other, fabric, style, reductions().along(), which),
                moves,
                stay,
                which);
    }

    /** With what the top of the leg had to give. */
    Order given(double crotchTaken, double riseTaken) {
        Reducing given = reducing.given(crotchTaken, riseTaken, fabric);
        return new Order(body, fabric, boot, style, machines, given, holding, moves, stay, leg);
    }

    Pattern.Reductions reductions() {
        return reducing.shares();
    }

    /** Why so much is taken off the body's measures. */
    List<Reason> reductionReasons() {
        return reducing.reasons();
    }

    /** A dimension of this leg. */
    Dimension its(Dimension.What what) {
        return Dimension.of(PieceName.of(PieceKind.LEG, leg), what);
    }

    /** The hip goes round both legs and is told once, with the left one. */
    Dimension hipWidth() {
        return Dimension.of(
                PieceName.of(PieceKind.LEG, leg == WhichLeg.RIGHT ? WhichLeg.LEFT : leg), Dimension.What.HIP_WIDTH);
    }

    Input along() {
        return Inputs.share(
                Dimension.of(Dimension.What.REDUCTION_ALONG), reductions().along());
    }

    Input hem() {
        return Inputs.share(
                Dimension.of(Dimension.What.REDUCTION_AT_HEM_AND_BOOT),
                reductions().hem());
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
        return Math.min(fabric.test().stretchAcross(), stitch.extensibility());
    }

    double frontRaise() {
        return moves.frontRaise(style);
    }

    double backRaise() {
        return moves.backRaise(style);
    }

    /** How much lower the lower edge lies on the wearer for what was moved, mm: at the inseam, or at the side line. */
    double lowered(boolean atSide) {
        double flat = shift(Shift.HEM) + (atSide ? shift(Shift.SIDE_HEM) : 0);
        return flat / (1 - reductions().along());
    }

    /** How far a point is moved, mm. */
    double shift(Shift point) {
        return moves.shifts().at(point);
    }
}
