package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;

/**
 * A cloth pulled both ways: round as a free strip, along by strain along plus coupling times strain round.
 *
 * <p>Ty = along(ey + coupling ex), Tx = round(ex) + coupling Ty: one energy, so no work comes from nothing.
 *
 * @param coupling narrowing of a strip over its stretch
 */
public record Cloth(Tension round, Tension along, double coupling) {
    public Cloth {
        Need.between("coupling", coupling, 0, 0.9);
    }

    /** From readings of free strips, strain and N/m: the one along was free to narrow, cloth on a body is not. */
    public static Cloth ofStrips(
            List<Double> strainsRound,
            List<Double> tensionsRound,
            List<Double> strainsAlong,
            List<Double> tensionsAlong,
            double coupling) {
        Need.size("tensions", tensionsAlong, strainsAlong.size());
        Tension round = Tension.through(strainsRound, tensionsRound);
        double give = coupling * coupling / (round.stiffness(0) * 1000);
        List<Double> held = new ArrayList<>();
        for (int i = 0; i < strainsAlong.size(); i++) {
            held.add(strainsAlong.get(i) - give * tensionsAlong.get(i));
        }
        return new Cloth(round, Tension.through(held, tensionsAlong), coupling);
    }
}
