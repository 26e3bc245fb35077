package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Half a pair of leggings near the example evening-practice, 34 unknowns: its girths, heights and load curves, reductions
 * set by hand (hip and leg 13 %, waist 4.6 %), the hem over a boot.
 */
public record EveningTube(
        double mu,
        double shorterLeg,
        double shorterRise,
        double waistReduction,
        double elastic,
        double widthShare,
        int steps) {
    private static final double BACK_RISE = 380;
    private static final double FRONT_RISE = 320;
    private static final Girths TRUNK =
            new Girths(List.of(0.0, 100.0, 200.0, 258.0), List.of(371.0, 432.0, 480.5, 478.0), 200, 300);
    private static final Girths LEG = new Girths(
            List.of(258.0, 281.0, 414.0, 570.0, 700.0, 800.0, 860.0, 1000.0, 1100.0),
            List.of(585.0, 570.0, 480.0, 365.0, 350.0, 305.0, 305.0, 340.0, 385.0),
            200,
            281);

    public static EveningTube standard() {
        return new EveningTube(0.4, 0.05, 0.14, 0.046, 0, 1, 20);
    }

    EveningTube friction(double other) {
        return new EveningTube(other, shorterLeg, shorterRise, waistReduction, elastic, widthShare, steps);
    }

    EveningTube elastic(double other) {
        return new EveningTube(mu, shorterLeg, shorterRise, waistReduction, other, widthShare, steps);
    }

    EveningTube shorterLeg(double other) {
        return new EveningTube(mu, other, shorterRise, waistReduction, elastic, widthShare, steps);
    }

    EveningTube steps(int other) {
        return new EveningTube(mu, shorterLeg, shorterRise, waistReduction, elastic, widthShare, other);
    }

    private static Cloth cloth() {
        return Cloth.ofStrips(
                List.of(0.2, 0.4, 0.6), List.of(62.0, 138.0, 260.0), List.of(0.2, 0.4), List.of(80.0, 190.0), 0.3);
    }

    public Tube tube() {
        List<Ring> trunk = new ArrayList<>();
        for (double place : new double[] {0, 50, 100, 150, 200, 240}) {
            double reduction = waistReduction + (0.13 - waistReduction) * Math.min(1, place / 200);
            trunk.add(new Ring(place, widthShare * TRUNK.curve().value(place) * (1 - reduction), 1, mu, 0.06));
        }
        List<Ring> leg = new ArrayList<>();
        for (int k = 0; k <= steps; k++) {
            double place = 281 + 800.0 * k / steps;
            boolean boot = place > 800;
            double girth = Math.max(boot ? 318 : 0, LEG.curve().value(place));
            leg.add(new Ring(place, widthShare * girth * 0.87, 1, boot ? 0.3 : mu, 1.2 / steps));
        }
        List<Double> rest = new ArrayList<>();
        List<Ring> all = new ArrayList<>(trunk);
        all.addAll(leg);
        for (int k = 0; k + 1 < all.size(); k++) {
            rest.add((all.get(k + 1).place() - all.get(k).place()) * (1 - shorterLeg));
        }
        Cloth cloth = cloth();
        double hem = leg.get(steps).restWidth();
        return new Tube(
                trunk,
                leg,
                rest,
                rest,
                TRUNK,
                LEG,
                cloth,
                Optional.of(new Rise(50, FRONT_RISE * (1 - shorterRise), BACK_RISE * (1 - shorterRise), mu)),
                Optional.of(new Hoop(cloth.round(), widthShare * 371 * (1 - waistReduction), 65, 1.7, elastic, mu, 0)),
                Optional.of(new Hoop(cloth.round(), hem, 32, 1.7, 0, 0.3, -16)));
    }

    public Pose standing() {
        return tube().standing(FRONT_RISE, BACK_RISE);
    }

    /** Knee and hip 8 % larger; longer over seat and knee, shorter in groin and hollow. */
    public Pose squat() {
        List<Ring> rings = tube().rings();
        List<Double> growth = rings.stream()
                .map(r -> 0.08 * Math.max(hump(r.place(), 200, 200), hump(r.place(), 570, 120)))
                .toList();
        List<Double> front = skin(rings, s -> 1 + 0.25 * hump(s, 570, 150) - 0.10 * hump(s, 258, 150));
        List<Double> back = skin(rings, s -> 1 - 0.10 * hump(s, 570, 150) + 0.15 * hump(s, 180, 180));
        return new Pose(growth, front, back, FRONT_RISE * 0.95, BACK_RISE * 1.22);
    }

    private static List<Double> skin(List<Ring> rings, UnaryOperator<Double> ratio) {
        List<Double> all = new ArrayList<>();
        for (int k = 0; k + 1 < rings.size(); k++) {
            double from = rings.get(k).place();
            double to = rings.get(k + 1).place();
            all.add((to - from) * ratio.apply((from + to) / 2));
        }
        return all;
    }

    private static double hump(double place, double middle, double reach) {
        double x = Math.abs(place - middle) / reach;
        return x < 1 ? (1 + Math.cos(Math.PI * x)) / 2 : 0;
    }
}
