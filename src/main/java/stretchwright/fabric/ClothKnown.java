package stretchwright.fabric;

import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * How surely pressures can be told from what was tested of a cloth, and what the next reading would buy.
 *
 * <p>The range of 8 in 10 as its upper end over its lower one. Its square of the log spread is a sum: what no test of the cloth
 * takes away (body, tape, sewing, the ruler), and a share for each reading that is not there; the shares are those of the steps
 * of a simulation (docs/maths/fit.md, Cloth test).
 *
 * @param weights under which a strip across was read: none, one, or more
 */
public record ClothKnown(int weights, boolean narrowing, boolean along, boolean wayBack) {
    /** 80 % of a normal distribution lie within so many spreads to both sides together. */
    private static final double EIGHT_IN_TEN = 2 * 1.2816;

    /** With all readings the ends are so far apart. */
    private static final double LEFT = squared(1.9);

    /** In the order in which they are worth most: how far apart the ends are with it, and were before. */
    public enum Reading {
        FULL_WEIGHT(Tell.said("reading.full-weight"), 2.6, 4.1),
        THREE_WEIGHTS(Tell.said("reading.three-weights"), 2.3, 2.6),
        WIDTH(Tell.said("reading.width"), 2.1, 2.3),
        ALONG(Tell.said("reading.along"), 2.0, 2.1),
        WAY_BACK(Tell.said("reading.way-back"), 1.9, 2.0);

        private final Said said;
        private final double lacking;

        Reading(Said said, double with, double without) {
            this.said = said;
            lacking = squared(without) - squared(with);
        }

        Said said() {
            return said;
        }
    }

    public static ClothKnown of(Fabric fabric) {
        Fabric.Test test = fabric.test();
        return new ClothKnown(
                test.loadAcross().isAssumed() ? 0 : test.loadAcross().readings().size(),
                test.hung().across().narrowing().isPresent(),
                !test.loadAlong().isAssumed(),
                test.hung().across().wayBack().isPresent());
    }

    private static double squared(double highOverLow) {
        double spread = StrictMath.log(highOverLow) / EIGHT_IN_TEN;
        return spread * spread;
    }

    /** Whether a reading is there. */
    public boolean has(Reading reading) {
        return switch (reading) {
            case FULL_WEIGHT -> weights > 0;
            case THREE_WEIGHTS -> weights > 1;
            case WIDTH -> narrowing;
            case ALONG -> along;
            case WAY_BACK -> wayBack;
        };
    }

    /** Upper end of the range of 8 in 10 over its lower one, of a pressure. */
    public double highOverLow() {
        double square = LEFT;
        for (Reading reading : Reading.values()) {
            square += has(reading) ? 0 : reading.lacking;
        }
        return StrictMath.exp(EIGHT_IN_TEN * Math.sqrt(square));
    }

    /** The reading that buys most of those that are not there. Who hangs a strip hangs the three weights. */
    public Optional<Reading> next() {
        for (Reading reading : Reading.values()) {
            if (reading != Reading.FULL_WEIGHT && !has(reading)) {
                return Optional.of(reading);
            }
        }
        return Optional.empty();
    }

    /** With that reading too. */
    public ClothKnown with(Reading reading) {
        return switch (reading) {
            case FULL_WEIGHT -> new ClothKnown(Math.max(1, weights), narrowing, along, wayBack);
            case THREE_WEIGHTS -> new ClothKnown(Math.max(3, weights), narrowing, along, wayBack);
            case WIDTH -> new ClothKnown(weights, true, along, wayBack);
            case ALONG -> new ClothKnown(weights, narrowing, true, wayBack);
            case WAY_BACK -> new ClothKnown(weights, narrowing, along, true);
        };
    }

    /** How wide the range is now, and what the next reading would make of it. */
    public Said said() {
        Part now = Part.number(highOverLow(), 1);
        return next().map(reading -> Tell.said(
                        "known.next",
                        now,
                        reading.said(),
                        Part.number(with(reading).highOverLow(), 1)))
                .orElseGet(() -> Tell.said("known.all", now));
    }
}
