package stretchwright.balance;

/**
 * One level of one half of the garment, as it is placed on the body.
 *
 * @param place mm below the waist along the standing skin
 * @param restWidth mm, of the trunk half of the whole
 * @param layers of cloth as they count on a body: 1, or about 1.7 for two
 * @param friction of cloth on what lies below it there
 * @param weight N, what this ring carries of the garment's
 */
public record Ring(double place, double restWidth, double layers, double friction, double weight) {
    public Ring {
        Need.finite("place", place);
        Need.positive("rest width", restWidth);
        Need.between("layers", layers, 0.1, 10);
        Need.between("friction", friction, 0, 5);
        Need.between("weight", weight, 0, 1000);
    }

    public Ring(double place, double restWidth, double friction) {
        this(place, restWidth, 1, friction, 0);
    }
}
