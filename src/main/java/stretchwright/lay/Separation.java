package stretchwright.lay;

import java.util.function.BooleanSupplier;
import stretchwright.ground.RandomStream;

/** Moves overlapping parts one by one, reweighing after each round, until none overlap or nothing is gained. */
final class Separation {
    static boolean FORGET = false;
    static int GOBACK = 1;
    static boolean FRESH = true;
    static boolean LOG = Boolean.getBoolean("log");
    private final Crowd crowd;
    private final Mover mover;
    private final RandomStream random;
    private final int[] order;
    private final BooleanSupplier halt;

    Separation(Crowd crowd, Mover mover, RandomStream random, BooleanSupplier halt) {
        this.crowd = crowd;
        this.mover = mover;
        this.random = random;
        this.order = new int[crowd.n];
        this.halt = halt;
    }

    /** Whether the crowd was separated; if not, it is left in the state of least overlap seen. */
    boolean separate(int strikes, int patience) {
        if (FRESH) {
            crowd.forgetWeights();
        }
        Crowd.Snapshot best = crowd.snapshot();
        int strike = 0;
        while (strike < strikes && best.overlap() > 0) {
            double before = best.overlap();
            for (int idle = 0; idle < patience && best.overlap() > 0; idle++) {
                if (!round()) {
                    crowd.restore(best);
                    return false;
                }
                double overlap = crowd.overlap();
                if (overlap < best.overlap()) {
                    idle = overlap < 0.98 * best.overlap() ? -1 : idle;
                    best = crowd.snapshot();
                }
                crowd.reweigh();
            }
            if (LOG) { int c = 0; for (int i = 0; i < crowd.n; i++) c += crowd.overlaps(i) ? 1 : 0; System.out.printf("    strike %d before %.0f best %.0f end %.0f colliding %d work %.2fM len %.0f%n", strike, before, best.overlap(), crowd.overlap(), c, mover.work()/1e6, crowd.length); }
            strike = best.overlap() < 0.98 * before ? 0 : strike + 1;
            if (FORGET) {
                crowd.forgetWeights();
            }
            if (strike % GOBACK == 0) {
                crowd.restore(best);
            }
        }
        crowd.restore(best);
        return best.overlap() == 0;
    }

    private boolean round() {
        int count = 0;
        for (int i = 0; i < crowd.n; i++) {
            if (crowd.overlaps(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            int other = random.below(k + 1);
            int i = order[other];
            order[other] = order[k];
            if (crowd.overlaps(i)) {
                if (halt.getAsBoolean()) {
                    return false;
                }
                mover.move(i);
            }
        }
        return true;
    }
}
