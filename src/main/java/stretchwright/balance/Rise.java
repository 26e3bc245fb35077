package stretchwright.balance;

/**
 * The crotch seam of a garment: cloth beside the centre seams that runs from waist edge to waist edge between the legs.
 *
 * @param width mm, how much cloth on this half goes with the seam
 * @param sewnFront mm, waist edge to crotch point as sewn
 * @param friction of cloth on the body where it passes between the legs
 */
public record Rise(double width, double sewnFront, double sewnBack, double friction) {
    public Rise {
        Need.positive("width", width);
        Need.positive("sewn front", sewnFront);
        Need.positive("sewn back", sewnBack);
        Need.between("friction", friction, 0, 5);
    }
}
