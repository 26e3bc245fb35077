package stretchwright.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.RandomStream;

/** Garments and poses by chance: sound ones and odd ones, slack, tight, with and without band, cuff, rise. */
final class RandomTubes {
    private final RandomStream stream;
    private final int trunkRings;
    private final int legRings;

    RandomTubes(RandomStream stream, int trunkRings, int legRings) {
        this.stream = stream;
        this.trunkRings = trunkRings;
        this.legRings = legRings;
    }

    private double between(double low, double high) {
        return stream.between(low, high);
    }

    private boolean likely(double chance) {
        return stream.nextDouble() < chance;
    }

    private Cloth cloth() {
        double scale = between(0.4, 2.5);
        if (likely(0.3)) {
            return new Cloth(Tension.straight(300 * scale), Tension.straight(450 * scale), between(0, 0.4));
        }
        return Cloth.ofStrips(
                List.of(0.1, 0.2, 0.4, 0.6),
                List.of(25 * scale, 62 * scale, 138 * scale, 260 * scale),
                List.of(0.1, 0.2, 0.4),
                List.of(35 * scale, 80 * scale, 190 * scale),
                between(0, 0.45));
    }

    Tube tube() {
        Girths trunkGirths = new Girths(
                List.of(0.0, 100.0, 200.0, 260.0),
                List.of(between(320, 420), between(390, 450), between(440, 540), between(440, 520)),
                190,
                300);
        Girths legGirths = Girths.of(
                List.of(260.0, 420.0, 580.0, 700.0, 900.0, 1100.0),
                List.of(
                        between(520, 640),
                        between(430, 520),
                        between(340, 400),
                        between(320, 380),
                        between(200, 240),
                        between(220, 380)));
        double mu = between(0.1, 0.8);
        double ease = between(-0.03, 0.25);
        double weight = between(0, 0.2);
        List<Ring> trunk = new ArrayList<>();
        for (int k = 0; k < trunkRings; k++) {
            trunk.add(ring(230.0 * k / (trunkRings - 1), trunkGirths, ease, mu, weight));
        }
        List<Ring> leg = new ArrayList<>();
        for (int k = 0; k < legRings; k++) {
            leg.add(ring(280 + 720.0 * k / (legRings - 1), legGirths, ease, k > 0.8 * legRings ? 0.3 : mu, weight));
        }
        Cloth cloth = cloth();
        double shorter = between(-0.01, 0.08);
        double crotch = between(0.05, 0.18);
        Optional<Rise> rise = likely(0.85)
                ? Optional.of(new Rise(between(30, 80), 320 * (1 - crotch), 380 * (1 - crotch), mu))
                : Optional.empty();
        Optional<Hoop> band = likely(0.85)
                ? Optional.of(new Hoop(
                        cloth.round(), trunk.get(0).restWidth(), between(30, 90), 1.7, likely(0.4) ? 6 : 0, mu, 0))
                : Optional.empty();
        Optional<Hoop> cuff = likely(0.7)
                ? Optional.of(new Hoop(cloth.round(), leg.get(legRings - 1).restWidth(), 32, 1.7, 0, 0.3, -16))
                : Optional.empty();
        return new Tube(
                trunk,
                leg,
                rest(trunk, leg, shorter),
                rest(trunk, leg, shorter),
                trunkGirths,
                legGirths,
                cloth,
                rise,
                band,
                cuff);
    }

    private Ring ring(double place, Girths girths, double ease, double mu, double weight) {
        double reduction = ease + between(-0.04, 0.04);
        return new Ring(place, girths.curve().value(place) * (1 - reduction), likely(0.9) ? 1 : 1.7, mu, weight);
    }

    private List<Double> rest(List<Ring> trunk, List<Ring> leg, double shorter) {
        List<Ring> all = new ArrayList<>(trunk);
        all.addAll(leg);
        List<Double> rest = new ArrayList<>();
        for (int k = 0; k + 1 < all.size(); k++) {
            rest.add((all.get(k + 1).place() - all.get(k).place()) * (1 - shorter - between(-0.02, 0.02)));
        }
        return rest;
    }

    Pose standing(Tube tube) {
        return tube.standing(320, 380);
    }

    Pose bent(Tube tube) {
        Pose standing = standing(tube);
        List<Double> growth = new ArrayList<>(Collections.nCopies(tube.rings().size(), 0.0));
        growth.replaceAll(g -> between(-0.02, 0.10));
        return new Pose(growth, skin(standing), skin(standing), between(290, 330), between(400, 500));
    }

    private List<Double> skin(Pose standing) {
        List<Double> all = new ArrayList<>(standing.skinFront());
        all.replaceAll(l -> l * between(0.9, 1.3));
        return all;
    }
}
