package stretchwright.balance;

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

    /** Held from narrowing, a cloth may be stiffer by no more than this. */
    private static final double MOST_STIFFENED = 0.5;

    /**
     * From readings of free strips, strain and N/m: the one along was free to narrow, cloth on a body is not. 1 / held = 1 / free -
     * coupling^2 / round by the stiffnesses at the start; the whole curve is drawn together by that share.
     */
    public static Cloth ofStrips(
            List<Double> strainsRound,
            List<Double> tensionsRound,
            List<Double> strainsAlong,
            List<Double> tensionsAlong,
            double coupling) {
        Need.size("tensions", tensionsAlong, strainsAlong.size());
        Tension round = Tension.through(strainsRound, tensionsRound);
        double free = Tension.through(strainsAlong, tensionsAlong).stiffness(0);
        double share = 1 - Math.min(MOST_STIFFENED, coupling * coupling * free / round.stiffness(0));
        List<Double> held = strainsAlong.stream().map(e -> share * e).toList();
        return new Cloth(round, Tension.through(held, tensionsAlong), coupling);
    }
}
