package stretchwright.fabric;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cloth, as measured. Shares, not percent: 0.6 is 60 %.
 *
 * @param usableWidth between the selvage strips that cannot be used, mm
 * @param onHand length already owned, mm
 * @param weight g/m2
 * @param stretchAcross selvage to selvage, at an easy pull
 * @param stretchAlong parallel to the selvage, at an easy pull
 * @param recovery share of the extension that comes back
 * @param oneWay print, nap or sheen has a direction: all pieces lie the same way up
 * @param repeatAlong print repeat, mm; 0 for none
 * @param showsThroughAt areal stretch at which the test card showed
 * @param wrapped reduction found by the wrap test: share by which the cloth, pinned comfortably, was shorter than the girth
 * @param assumed which stretch was not measured
 * @param shape what of it can be cut from
 */
public record Fabric(
        String name,
        double usableWidth,
        OptionalDouble onHand,
        OptionalDouble weight,
        double stretchAcross,
        double stretchAlong,
        LoadCurve loadAcross,
        LoadCurve loadAlong,
        OptionalDouble recovery,
        double shrinkageAcross,
        double shrinkageAlong,
        boolean oneWay,
        double repeatAlong,
        OptionalDouble showsThroughAt,
        Optional<Price> price,
        OptionalDouble wrapped,
        Assumed assumed,
        ClothShape shape) {

    /** Without a wrap test, both stretches measured. */
    public Fabric(
            String name,
            double usableWidth,
            OptionalDouble onHand,
            OptionalDouble weight,
            double stretchAcross,
            double stretchAlong,
            LoadCurve loadAcross,
            LoadCurve loadAlong,
            OptionalDouble recovery,
            double shrinkageAcross,
            double shrinkageAlong,
            boolean oneWay,
            double repeatAlong,
            OptionalDouble showsThroughAt,
            Optional<Price> price) {
        this(
                name,
                usableWidth,
                onHand,
                weight,
                stretchAcross,
                stretchAlong,
                loadAcross,
                loadAlong,
                recovery,
                shrinkageAcross,
                shrinkageAlong,
                oneWay,
                repeatAlong,
                showsThroughAt,
                price,
                OptionalDouble.empty(),
                Assumed.NOTHING,
                ClothShape.WHOLE);
    }

    /** The same cloth with other places to cut from. */
    public Fabric with(ClothShape other) {
        return soldAs(name, usableWidth, onHand, oneWay, repeatAlong, price, other);
    }

    /** The same cloth, whole, wider or narrower, with or without a direction: to lay on, before it is bought. */
    public Fabric with(double otherWidth, boolean withDirection) {
        return soldAs(name, otherWidth, onHand, withDirection, repeatAlong, price, ClothShape.WHOLE);
    }

    /** The same quality as another roll of it: in another colour or print, of another width. */
    public Fabric soldAs(
            String otherName,
            double otherWidth,
            OptionalDouble otherOnHand,
            boolean withDirection,
            double otherRepeat,
            Optional<Price> otherPrice,
            ClothShape otherShape) {
        return new Fabric(
                otherName,
                otherWidth,
                otherOnHand,
                weight,
                stretchAcross,
                stretchAlong,
                loadAcross,
                loadAlong,
                recovery,
                shrinkageAcross,
                shrinkageAlong,
                withDirection,
                otherRepeat,
                showsThroughAt,
                otherPrice,
                wrapped,
                assumed,
                otherShape);
    }

    /** The same cloth with another stretch and the curves that are assumed for it: a cloth to try with. */
    public Fabric stretching(double across, double along) {
        return new Fabric(
                name,
                usableWidth,
                onHand,
                weight,
                across,
                along,
                LoadCurve.assumed(across),
                LoadCurve.assumed(along),
                recovery,
                shrinkageAcross,
                shrinkageAlong,
                oneWay,
                repeatAlong,
                showsThroughAt,
                price,
                OptionalDouble.empty(),
                Assumed.NOTHING,
                shape);
    }

    /**
     * Which stretch was not measured.
     *
     * @param across taken from a wrap test
     * @param along taken from the lengths in a pose that the cloth reached: it may stretch more
     */
    public record Assumed(boolean across, boolean along) {
        public static final Assumed NOTHING = new Assumed(false, false);
    }

    /** Price of one metre of length, in whatever money the maker uses. */
    public record Price(double perMetre) {}
}
