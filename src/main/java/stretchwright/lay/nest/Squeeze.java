package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.RandomStream;

/**
 * One worker's search for shorter layouts: takes a little off the length, separates what then overlaps, and so on.
 *
 * <p>Exploring, a length that cannot be reached makes it disturb the arrangement; compressing, it takes off less.
 * After each round of work it meets the other worker and goes on from that one's layout if it is shorter.
 */
final class Squeeze {
    /** Shares of the length taken off while compressing: the first, halved where it is too much, and the least. */
    private static final double COMPRESS_FIRST = 0.0005;

    private static final double COMPRESS_LEAST = 0.00001;
    private static final int STRIKES = 3;
    private static final int COMPRESS_STRIKES = 5;
    private static final int PATIENCE = 100;
    /** Rounds without gain after which a large step is too large: for many parts, as the first steps shape all that follows. */
    private static final int LARGE_PATIENCE = 400;

    private static final int LARGE_PATIENCE_FOR_FEW = 40;
    /** Tries for another layout of the same length. */
    private static final int SIDEWAYS = 10;
    /** Large parts are those of at least this share of the largest area. */
    private static final double LARGE = 0.25;
    /** States kept of a length that was not reached. */
    private static final int POOL = 40;
    /** Up to this many parts large steps are given up early and parts are also scattered: fresh starts beat small changes. */
    private static final int FEW = 30;

    private final Crowd crowd;
    private final RandomStream random;
    private final Separation separation;
    private final Stride stride = new Stride();
    private final Crew crew;
    /** For each share taken off the states that failed, the least overlap first. */
    private final Map<Double, List<Crowd.Snapshot>> pools = new HashMap<>();

    private Crowd.Snapshot incumbent;
    private long rested;

    Squeeze(Bed bed, Layout start, RandomStream random, Crew crew) {
        this.crowd = new Crowd(bed, start.length());
        this.random = random;
        this.crew = crew;
        this.separation = new Separation(crowd, new Mover(crowd, random), random, () -> crew.meet(this));
        crowd.start(start);
        this.incumbent = crowd.snapshot();
    }

    /** Work done, and rested. */
    long work() {
        return crowd.work() + rested;
    }

    /** The shortest layout this worker knows. */
    Crowd.Snapshot incumbent() {
        return incumbent;
    }

    /** The length it is trying for. */
    double length() {
        return crowd.length;
    }

    /** Until the exploring is over. */
    void explore() {
        boolean moved = shrink(stride.share());
        while (!crew.over(Crew.Phase.EXPLORE)) {
            boolean done = moved && separated(stride.large());
            boolean other = !done && missed(moved);
            if (done) {
                keep();
                stride.reached();
            }
            boolean overtaken = takeOver();
            if (overtaken) {
                stride.overtaken();
            }
            boolean fresh = stride.large() || pool().isEmpty();
            if (done || overtaken || !moved || other && fresh) {
                moved = shrink(stride.share());
            } else if (!crew.over(Crew.Phase.EXPLORE)) {
                disturb();
            }
        }
    }

    /** True where another share is to be taken off now. */
    private boolean missed(boolean moved) {
        if (moved && !stride.large()) {
            remember();
        }
        boolean atLeast = !stride.large();
        boolean other = stride.missed();
        if (other && stride.anew()) {
            pool().clear();
        }
        if (other && atLeast) {
            sideways();
        }
        return other;
    }

    /** Goes on from another layout of the same length where one is soon found: others are shorter near that. */
    private void sideways() {
        for (int k = 0; k < SIDEWAYS && !crew.over(Crew.Phase.EXPLORE); k++) {
            if (crew.best().length() < incumbent.length()) {
                return;
            }
            crowd.restore(incumbent);
            swap();
            if (separation.separate(1, PATIENCE)) {
                double before = incumbent.length();
                keep();
                if (incumbent.length() < before) {
                    stride.reached();
                }
                return;
            }
        }
    }

    private boolean separated(boolean large) {
        int patience = crowd.movable <= FEW ? LARGE_PATIENCE_FOR_FEW : LARGE_PATIENCE;
        return large ? separation.separate(1, patience) : separation.separate(STRIKES, PATIENCE);
    }

    /** The same with ever smaller steps, always from the shortest layout. */
    void compress() {
        double step = COMPRESS_FIRST;
        while (!crew.over(Crew.Phase.COMPRESS)) {
            takeOver();
            if (shrink(step) && separation.separate(COMPRESS_STRIKES, PATIENCE)) {
                keep();
            } else {
                step = step / 2 > COMPRESS_LEAST ? step / 2 : COMPRESS_FIRST;
            }
        }
    }

    /** Goes on from another worker's layout where that is shorter. */
    private boolean takeOver() {
        if (crew.best().length() >= incumbent.length()) {
            return false;
        }
        incumbent = crew.best();
        pools.clear();
        return true;
    }

    private void keep() {
        double top = 0;
        for (int i = 0; i < crowd.movable; i++) {
            top = Math.max(top, crowd.boxY1[i]);
        }
        crowd.length = top;
        incumbent = crowd.snapshot();
        pools.clear();
    }

    /**
     * Takes a share of the length away at a random cut; what lies beyond it moves up, and over others if it must.
     * False, after a rest, where the layout is as short as any can be.
     */
    private boolean shrink(double share) {
        crowd.restore(incumbent);
        double length = Math.max(crowd.bed.shortest, Math.floor(crowd.length * (1 - share)));
        double gone = crowd.length - length;
        if (gone <= 0) {
            rested += crew.round;
            crew.meet(this);
            return false;
        }
        double cut = random.nextDouble() * length;
        crowd.length = length;
        for (int i = 0; i < crowd.movable; i++) {
            double middle = (crowd.boxY0[i] + crowd.boxY1[i]) / 2;
            lay(i, crowd.x[i], middle > cut ? crowd.y[i] - gone : crowd.y[i]);
        }
        return true;
    }

    private void lay(int i, double px, double py) {
        Bed bed = crowd.bed;
        int v = bed.within(i, crowd.variant[i], crowd.length);
        crowd.move(i, v, bed.onX(v, px), bed.onY(v, py, crowd.length));
    }

    private List<Crowd.Snapshot> pool() {
        return pools.computeIfAbsent(stride.share(), s -> new ArrayList<>());
    }

    private void remember() {
        List<Crowd.Snapshot> pool = pool();
        pool.add(crowd.snapshot());
        pool.sort(Comparator.comparingDouble(Crowd.Snapshot::overlap));
        if (pool.size() > POOL) {
            pool.remove(POOL);
        }
    }

    /** Goes back to one of the states that failed, rather a better one, and changes it. */
    private void disturb() {
        List<Crowd.Snapshot> pool = pool();
        int pick = (int) Math.min(pool.size() - 1, Math.abs(random.nextGaussian()) * 0.25 * pool.size());
        crowd.restore(pool.get(pick));
        if (crowd.movable <= FEW && random.nextDouble() < 0.3) {
            scatter();
        } else {
            swap();
        }
    }

    private void scatter() {
        for (int i = 0; i < crowd.movable; i++) {
            lay(i, random.nextDouble() * crowd.bed.width, random.nextDouble() * crowd.length);
        }
    }

    /** Two large parts of different kinds change places; where all are alike, one goes elsewhere. */
    private void swap() {
        Bed bed = crowd.bed;
        List<Integer> large = bed.large(LARGE);
        int a = large.get(random.below(large.size()));
        List<Integer> others =
                large.stream().filter(i -> bed.kind[i] != bed.kind[a]).toList();
        if (others.isEmpty()) {
            lay(a, random.nextDouble() * bed.width, random.nextDouble() * crowd.length);
            return;
        }
        int b = others.get(random.below(others.size()));
        double ax = (crowd.boxX0[a] + crowd.boxX1[a]) / 2;
        double ay = (crowd.boxY0[a] + crowd.boxY1[a]) / 2;
        centre(a, (crowd.boxX0[b] + crowd.boxX1[b]) / 2, (crowd.boxY0[b] + crowd.boxY1[b]) / 2);
        centre(b, ax, ay);
    }

    private void centre(int i, double px, double py) {
        Bed bed = crowd.bed;
        int v = crowd.variant[i];
        lay(i, px - (bed.minX[v] + bed.maxX[v]) / 2, py - (bed.minY[v] + bed.maxY[v]) / 2);
    }
}
