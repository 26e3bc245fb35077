package stretchwright.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** A tube without a trunk on a straight cone, from which closed forms start; N/m and mm. */
record PlainTube(
        int steps,
        double length,
        double width,
        double girthAbove,
        double slope,
        Cloth cloth,
        double friction,
        double weight,
        double skin) {
    static PlainTube of(double width, double girthAbove, double slope, Cloth cloth, double friction) {
        return new PlainTube(200, 400, width, girthAbove, slope, cloth, friction, 0, 400);
    }

    PlainTube steps(int other) {
        return new PlainTube(other, length, width, girthAbove, slope, cloth, friction, weight, skin);
    }

    PlainTube length(double sewn, double onSkin) {
        return new PlainTube(steps, sewn, width, girthAbove, slope, cloth, friction, weight, onSkin);
    }

    PlainTube weight(double other) {
        return new PlainTube(steps, length, width, girthAbove, slope, cloth, friction, other, skin);
    }

    Tube tube() {
        List<Ring> rings = new ArrayList<>();
        for (int k = 0; k <= steps; k++) {
            double share = (k == 0 || k == steps ? 0.5 : 1.0) / steps;
            rings.add(new Ring(skin * k / steps, width, 1, friction, weight * share));
        }
        List<Double> rest = Collections.nCopies(steps, length / steps);
        Girths girths = Girths.of(List.of(0.0, skin), List.of(girthAbove, girthAbove + slope * skin));
        return new Tube(
                List.of(),
                rings,
                rest,
                rest,
                girths,
                girths,
                cloth,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    Pose standing() {
        return tube().standing(0, 0);
    }

    /** From where it was placed. */
    Settling run(Balance.Hold hold, double give) {
        return run(Balance.State.placed(steps + 1), hold, give);
    }

    Settling run(Balance.State before, Balance.Hold hold, double give) {
        Tube tube = tube();
        Placing placing = new Placing(tube, standing());
        return Balance.run(tube, placing, placing.net(), before, hold, give);
    }
}
