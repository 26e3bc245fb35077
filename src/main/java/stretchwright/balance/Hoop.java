package stretchwright.balance;

/**
 * A band or cuff at one end of the tube: a ring of its own stiffness that moves with the edge.
 *
 * @param restWidth mm, of a band half of the whole
 * @param layers of its cloth as they count on a body
 * @param elastic tension of an elastic in it, N
 * @param below how far its middle lies below the edge, mm; above the edge less than 0
 */
public record Hoop(
        Tension cloth, double restWidth, double height, double layers, double elastic, double friction, double below) {
    public Hoop {
        Need.positive("rest width", restWidth);
        Need.positive("height", height);
        Need.between("layers", layers, 0.1, 10);
        Need.between("elastic", elastic, 0, 1000);
        Need.between("friction", friction, 0, 5);
        Need.finite("below", below);
    }
}
