package stretchwright.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * One half of a garment, from the waist edge down to the hem.
 *
 * @param trunk rings from the waist edge to above the crotch, each with a front and a back; none for a plain tube
 * @param leg rings of one leg down to the hem
 * @param restFront sewn length of each step between rings, front line, mm
 * @param trunkGirths half the trunk's; of a tube without a trunk not asked
 */
public record Tube(
        List<Ring> trunk,
        List<Ring> leg,
        List<Double> restFront,
        List<Double> restBack,
        Girths trunkGirths,
        Girths legGirths,
        Cloth cloth,
        Optional<Rise> rise,
        Optional<Hoop> band,
        Optional<Hoop> cuff) {
    public Tube {
        trunk = List.copyOf(trunk);
        leg = List.copyOf(leg);
        restFront = List.copyOf(restFront);
        restBack = List.copyOf(restBack);
        int rings = trunk.size() + leg.size();
        if (leg.isEmpty() || rings < 2) {
            throw new IllegalArgumentException("a tube needs two rings, one of them on the leg");
        }
        Need.size("front lengths", restFront, rings - 1);
        Need.size("back lengths", restBack, rings - 1);
        restFront.forEach(l -> Need.positive("rest length", l));
        restBack.forEach(l -> Need.positive("rest length", l));
        Need.rising("places", rings(trunk, leg).stream().map(Ring::place).toList());
        for (Rise seam : rise.stream().toList()) {
            if (trunk.isEmpty()) {
                throw new IllegalArgumentException("a rise needs a trunk");
            }
            trunk.forEach(ring -> Need.between("width of the rise", seam.width(), 0, ring.restWidth() / 2));
        }
    }

    List<Ring> rings() {
        return rings(trunk, leg);
    }

    private static List<Ring> rings(List<Ring> trunk, List<Ring> leg) {
        List<Ring> all = new ArrayList<>(trunk);
        all.addAll(leg);
        return Collections.unmodifiableList(all);
    }

    /** The pose it was placed in: no growth, the skin between its rings as the standing body has it. */
    public Pose standing(double riseFront, double riseBack) {
        List<Ring> all = rings();
        List<Double> skin = new ArrayList<>();
        for (int i = 0; i + 1 < all.size(); i++) {
            skin.add(all.get(i + 1).place() - all.get(i).place());
        }
        return new Pose(Collections.nCopies(all.size(), 0.0), skin, skin, riseFront, riseBack);
    }
}
