package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How a body moves from standing into a pose: by what share girths and skin grow. Means over half a ring and not what skin does
 * at one spot; sources and ranges: docs/maths/balance.md, "Constants".
 *
 * @param hip growth of the girth there
 * @param kneeFront skin over the kneecap, lengthwise
 * @param hollow skin in the hollow of the knee
 * @param seat skin over the seat
 * @param groin skin in the groin
 * @param riseBack waist to crotch behind
 */
public record Motion(
        double hip,
        double knee,
        double kneeFront,
        double hollow,
        double seat,
        double groin,
        double riseFront,
        double riseBack) {
    /** A deep knee bend. */
    public static final Motion SQUAT = new Motion(0.08, 0.08, 0.25, -0.10, 0.15, -0.10, -0.05, 0.22);

    /** A deep bend on one leg: as much further as skin was read to grow there against a squat (derived; fit.md, "Poses"). */
    public static final Motion SIT_SPIN = SQUAT.further(1.27);

    /** How far its joint's growth reaches, as a share of the way from crotch to knee (tried against the squat's means). */
    private static final double KNEE_REACH = 0.48;

    private static final double KNEE_GIRTH_REACH = 0.38;
    private static final double HIP_REACH = 0.62;

    /** The same, bent so many times as far. */
    private Motion further(double times) {
        return new Motion(
                times * hip,
                times * knee,
                times * kneeFront,
                times * hollow,
                times * seat,
                times * groin,
                times * riseFront,
                times * riseBack);
    }

    public Motion withGirths(double atHip, double atKnee) {
        return new Motion(atHip, atKnee, kneeFront, hollow, seat, groin, riseFront, riseBack);
    }

    public Motion withSkin(double overKnee, double overSeat) {
        return new Motion(hip, knee, overKnee, hollow, overSeat, groin, riseFront, riseBack);
    }

    public Motion withRiseBack(double share) {
        return new Motion(hip, knee, kneeFront, hollow, seat, groin, riseFront, share);
    }

    /** Of a tube placed on that body. */
    public Pose pose(Tube tube, Landmarks at, double bodyFront, double bodyBack) {
        List<Ring> rings = tube.rings();
        double thigh = at.thigh();
        List<Double> growth = new ArrayList<>();
        for (Ring ring : rings) {
            growth.add(hip * hump(ring.place(), at.hip(), HIP_REACH * thigh)
                    + knee * hump(ring.place(), at.knee(), KNEE_GIRTH_REACH * thigh));
        }
        double reach = KNEE_REACH * thigh;
        return new Pose(
                growth,
                skin(rings, s -> 1 + kneeFront * hump(s, at.knee(), reach) + groin * hump(s, at.crotch(), reach)),
                skin(rings, s -> 1 + hollow * hump(s, at.knee(), reach) + seat * hump(s, at.hip(), HIP_REACH * thigh)),
                bodyFront * (1 + riseFront),
                bodyBack * (1 + riseBack));
    }

    private static List<Double> skin(List<Ring> rings, DoubleUnaryOperator ratio) {
        List<Double> all = new ArrayList<>();
        for (int k = 0; k + 1 < rings.size(); k++) {
            double from = rings.get(k).place();
            double to = rings.get(k + 1).place();
            all.add((to - from) * ratio.applyAsDouble((from + to) / 2));
        }
        return all;
    }

    private static double hump(double place, double middle, double reach) {
        double x = Math.abs(place - middle) / reach;
        return x < 1 ? (1 + StrictMath.cos(Math.PI * x)) / 2 : 0;
    }
}
