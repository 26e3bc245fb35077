package stretchwright.lay.nest;

import java.util.function.BooleanSupplier;
import stretchwright.ground.RandomStream;

/**
 * Moves overlapping parts one by one in random order, reweighing after each round, until none overlap or nothing is
 * gained (guided local search, after Voudouris and Tsang 1999 and Umetani 2009, from memory).
 *
 * <p>After some rounds without gain it goes back to the state of least overlap, with the weights as they have become:
 * they hold what was learnt. Weights forgotten there gave layouts 1.2 points less dense in the mean (docs/maths/lay.md).
 */
final class Separation {
    /** Overlap counts as less only if it is so by this share, or creeping would never end. */
    private static final double CLEARLY = 0.98;

    private final Crowd crowd;
    private final Mover mover;
    private final RandomStream random;
    private final BooleanSupplier halt;
    private final int[] order;

    /** @param halt asked before each part is moved */
    Separation(Crowd crowd, Mover mover, RandomStream random, BooleanSupplier halt) {
        this.crowd = crowd;
        this.mover = mover;
        this.random = random;
        this.halt = halt;
        this.order = new int[crowd.movable];
    }

    /**
     * Whether the crowd was separated; if not, it is left in the state of least overlap seen.
     *
     * @param strikes times it may go back without clear gain
     * @param patience rounds without clear gain before it goes back
     */
    boolean separate(int strikes, int patience) {
        crowd.forgetWeights();
        Crowd.Snapshot best = crowd.snapshot();
        int strike = 0;
        while (strike < strikes && best.overlap() > 0) {
            Crowd.Snapshot better = attempt(best, patience);
            strike = better.overlap() < CLEARLY * best.overlap() ? 0 : strike + 1;
            best = better;
            crowd.restore(best);
            if (halt.getAsBoolean()) {
                break;
            }
        }
        return best.overlap() == 0;
    }

    private Crowd.Snapshot attempt(Crowd.Snapshot start, int patience) {
        Crowd.Snapshot best = start;
        for (int idle = 0; idle < patience && best.overlap() > 0; idle++) {
            if (!round()) {
                return best;
            }
            double overlap = crowd.overlap();
            if (overlap < best.overlap()) {
                idle = overlap < CLEARLY * best.overlap() ? -1 : idle;
                best = crowd.snapshot();
            }
            crowd.reweigh();
        }
        return best;
    }

    /** False if it was halted. */
    private boolean round() {
        int count = 0;
        for (int i = 0; i < crowd.movable; i++) {
            if (crowd.overlaps(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            int other = random.below(k + 1);
            int i = order[other];
            order[other] = order[k];
            if (halt.getAsBoolean()) {
                return false;
            }
            if (crowd.overlaps(i)) {
                mover.move(i);
            }
        }
        return true;
    }
}
