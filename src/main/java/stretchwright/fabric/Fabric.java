package stretchwright.fabric;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cloth, as measured. Shares, not percent: 0.6 is 60 %.
 *
 * @param quality what every roll of it is like
 * @param roll the one to be cut from
 * @param test how it stretches
 * @param crosswise whether all this is told as it is worn where the pieces are cut crosswise: what lies along the cloth is across
 * @param learnt what a worn pair of it taught; its pull is in the load curves already
 * @param usual what of it nobody knows yet, and was taken as usual
 */
public record Fabric(Quality quality, Roll roll, Test test, boolean crosswise, Learnt learnt, Usual usual) {
    /** As it lies on the table. */
    public Fabric(Quality quality, Roll roll, Test test) {
        this(quality, roll, test, false, Learnt.NOTHING, Usual.NOTHING);
    }

    /** @param weight g/m2 */
    public record Quality(OptionalDouble weight, double shrinkageAcross, double shrinkageAlong) {
        public Quality shrinking(double across, double along) {
            return new Quality(weight, across, along);
        }
    }

    /**
     * A roll in one colour or print.
     *
     * @param usableWidth between the selvage strips that cannot be used, mm
     * @param onHand length already owned, mm
     * @param oneWay print, nap or sheen has a direction: all pieces lie the same way up
     * @param repeatAlong print repeat, mm; 0 for none
     * @param shape what of it can be cut from
     */
    public record Roll(
            String name,
            double usableWidth,
            OptionalDouble onHand,
            boolean oneWay,
            double repeatAlong,
            Optional<Price> price,
            ClothShape shape) {
        /** With other places to cut from. */
        public Roll with(ClothShape other) {
            return new Roll(name, usableWidth, onHand, oneWay, repeatAlong, price, other);
        }

        /** Whole, wider or narrower, with or without a direction. */
        public Roll with(double otherWidth, boolean withDirection) {
            return new Roll(name, otherWidth, onHand, withDirection, repeatAlong, price, ClothShape.WHOLE);
        }
    }

    /**
     * What tests by hand told of it.
     *
     * @param stretchAcross selvage to selvage, at an easy pull
     * @param stretchAlong parallel to the selvage, at an easy pull
     * @param recovery share of the extension that comes back
     * @param showsThroughAt areal stretch at which the test card showed
     * @param wrapped reduction found by the wrap test: share by which the cloth, pinned comfortably, was shorter than the
     *     girth
     * @param assumed which stretch was not measured
     * @param hung what hanging strips told besides the load curves
     */
    public record Test(
            double stretchAcross,
            double stretchAlong,
            LoadCurve loadAcross,
            LoadCurve loadAlong,
            OptionalDouble recovery,
            OptionalDouble showsThroughAt,
            OptionalDouble wrapped,
            Assumed assumed,
            Hung hung) {
        /** Where strips told no more than their load. */
        public Test(
                double stretchAcross,
                double stretchAlong,
                LoadCurve loadAcross,
                LoadCurve loadAlong,
                OptionalDouble recovery,
                OptionalDouble showsThroughAt,
                OptionalDouble wrapped,
                Assumed assumed) {
            this(
                    stretchAcross,
                    stretchAlong,
                    loadAcross,
                    loadAlong,
                    recovery,
                    showsThroughAt,
                    wrapped,
                    assumed,
                    Hung.NOTHING);
        }

        /** Another stretch; what told of the old one no longer does. */
        public Test with(double across, double along, LoadCurve otherAcross, LoadCurve otherAlong) {
            return new Test(
                    across,
                    along,
                    otherAcross,
                    otherAlong,
                    recovery,
                    showsThroughAt,
                    across == stretchAcross ? wrapped : OptionalDouble.empty(),
                    new Assumed(assumed.across() && across == stretchAcross, assumed.along() && along == stretchAlong),
                    new Hung(
                            across == stretchAcross ? hung.across() : Hung.Way.NOTHING,
                            along == stretchAlong ? hung.along() : Hung.Way.NOTHING));
        }

        /** Another recovery, and another stretch at which the card showed. */
        public Test with(OptionalDouble otherRecovery, OptionalDouble showsAt) {
            return new Test(
                    stretchAcross, stretchAlong, loadAcross, loadAlong, otherRecovery, showsAt, wrapped, assumed, hung);
        }

        /** With what hanging strips told besides the load curves. */
        public Test with(Hung other) {
            return new Test(
                    stretchAcross,
                    stretchAlong,
                    loadAcross,
                    loadAlong,
                    recovery,
                    showsThroughAt,
                    wrapped,
                    assumed,
                    other);
        }
    }

    /** As it is worn where the pieces are cut crosswise, and back: what was along is across. A wrap test told of one way only. */
    public Fabric turned() {
        Assumed turned = new Assumed(test.assumed.along(), test.assumed.across());
        return new Fabric(
                quality.shrinking(quality.shrinkageAlong(), quality.shrinkageAcross()),
                roll,
                new Test(
                        test.stretchAlong,
                        test.stretchAcross,
                        test.loadAlong,
                        test.loadAcross,
                        test.recovery,
                        test.showsThroughAt,
                        OptionalDouble.empty(),
                        turned,
                        test.hung.turned()),
                !crosswise,
                learnt,
                usual.turned());
    }

    /** As it lies on the table: along runs with the selvage. */
    public Fabric asLaid() {
        return crosswise ? turned() : this;
    }

    public Fabric with(Quality other) {
        return new Fabric(other, roll, test, crosswise, learnt, usual);
    }

    /** The same quality as another roll of it: in another colour or print, of another width. */
    public Fabric with(Roll other) {
        Usual still = usual.with(other.usableWidth() == roll.usableWidth());
        return new Fabric(quality, other, test, crosswise, learnt, still);
    }

    /** With what a worn pair taught. */
    public Fabric with(Learnt other) {
        return new Fabric(quality, roll, test, crosswise, other, usual);
    }

    public Fabric with(Test other) {
        Usual still =
                usual.with(other.stretchAcross() == test.stretchAcross(), other.stretchAlong() == test.stretchAlong());
        return new Fabric(quality, roll, other, crosswise, learnt, still);
    }

    /** With what was taken as usual of it. */
    public Fabric with(Usual other) {
        return new Fabric(quality, roll, test, crosswise, learnt, other);
    }

    /** The same cloth with other places to cut from. */
    public Fabric with(ClothShape other) {
        return with(roll.with(other));
    }

    /** The same cloth, whole, wider or narrower, with or without a direction: to lay on, before it is bought. */
    public Fabric with(double otherWidth, boolean withDirection) {
        return with(roll.with(otherWidth, withDirection));
    }

    /** The same cloth with another stretch and the curves that are assumed for it: a cloth to try with. */
    public Fabric stretching(double across, double along) {
        return with(usual.with(false, false))
                .with(new Test(
                        across,
                        along,
                        LoadCurve.assumed(across, quality.weight),
                        LoadCurve.assumed(along, quality.weight),
                        test.recovery,
                        test.showsThroughAt,
                        OptionalDouble.empty(),
                        Assumed.NOTHING));
    }

    /** Whether the stretch across was not measured, whatever stands for it. */
    public boolean assumesAcross() {
        return test.assumed.across() || usual.across();
    }

    public boolean assumesAlong() {
        return test.assumed.along() || usual.along();
    }

    /**
     * Which stretch was not measured, though the cloth is there.
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
