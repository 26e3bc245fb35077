package stretchwright.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stretchwright.ground.MonotoneCubic;

/**
 * Tension of a cloth against its strain, with stiffness and energy that are its exact slope and integral.
 *
 * <p>A smooth rising curve from (0, 0) through the readings, straight beyond the last one. Slack cloth keeps 2 % of the
 * first stiffness, blended in over 0.4 % of strain, so that every state has an answer. Readings in N/m as everywhere;
 * here and inside N/mm, since places are in mm.
 */
public final class Tension {
    /** Share of the first stiffness that slack cloth keeps. */
    private static final double SLACK = 0.02;

    /** Strain over which cloth goes slack. */
    private static final double BLEND = 0.004;

    private static final double METRE = 1000;

    private final MonotoneCubic curve;
    private final double first;

    private Tension(List<Double> strains, List<Double> tensions) {
        curve = new MonotoneCubic(strains, tensions);
        first = curve.slope(0);
    }

    /** Through readings of strain, a share, and tension, N/m, both rising from above 0. */
    public static Tension through(List<Double> strains, List<Double> tensions) {
        Need.size("tensions", tensions, strains.size());
        if (strains.isEmpty()) {
            throw new IllegalArgumentException("a tension needs a reading");
        }
        List<Double> from = new ArrayList<>(Collections.singletonList(0.0));
        List<Double> to = new ArrayList<>(Collections.singletonList(0.0));
        from.addAll(strains);
        tensions.forEach(t -> to.add(t / METRE));
        Need.rising("strains", from);
        Need.rising("tensions", to);
        return new Tension(from, to);
    }

    /** A straight line of one stiffness, N/m. */
    public static Tension straight(double stiffness) {
        return through(List.of(1.0), List.of(Need.positive("stiffness", stiffness)));
    }

    /** N/mm. */
    double tension(double strain) {
        if (strain >= 0) {
            return curve.value(strain);
        }
        double s = Math.max(strain, -BLEND) / BLEND + 1;
        double blended = BLEND * (1 - SLACK) * (s * s * s * (1 - s / 2) - 0.5);
        return first * (SLACK * strain + blended);
    }

    /** N/mm for a strain of 1. */
    double stiffness(double strain) {
        if (strain >= 0) {
            return curve.slope(strain);
        }
        double s = Math.max(0, strain / BLEND + 1);
        return first * (SLACK + (1 - SLACK) * s * s * (3 - 2 * s));
    }

    /** N/mm, the work that a strain has taken. */
    double energy(double strain) {
        if (strain >= 0) {
            return curve.integral(strain);
        }
        double e = Math.max(strain, -BLEND);
        double s = e / BLEND + 1;
        double s4 = s * s * s * s;
        double blended = BLEND * BLEND * (1 - SLACK) * (s4 * (0.25 - s / 10) - s / 2 + 0.35);
        double beyond = -0.5 * BLEND * (1 - SLACK) * (strain - e);
        return first * (SLACK * strain * strain / 2 + blended + beyond);
    }
}
