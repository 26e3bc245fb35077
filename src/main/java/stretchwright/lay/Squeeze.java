package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stretchwright.ground.RandomStream;

/** Shortens a layout: explores with larger steps and disturbances, then compresses with small ones. */
final class Squeeze {
    static double EXPLORE = 0.001;
    static double STEP0 = 0.001;
    static int STRIKES = 3;
    static int PATIENCE = 200;

    private final Crowd crowd;
    private final RandomStream random;
    private final Separation separation;
    private final BooleanSupplier halt;
    private final Consumer<Crowd.Snapshot> found;
    private Crowd.Snapshot incumbent;

    Squeeze(
            Crowd crowd,
            Mover mover,
            RandomStream random,
            BooleanSupplier halt,
            Consumer<Crowd.Snapshot> found) {
        this.crowd = crowd;
        this.random = random;
        this.halt = halt;
        this.found = found;
        this.separation = new Separation(crowd, mover, random, halt);
        this.incumbent = crowd.snapshot();
    }

    void explore() {
        List<Crowd.Snapshot> pool = new ArrayList<>();
        double step = STEP0;
        shrink(step);
        while (!halt.getAsBoolean()) {
            if (separation.separate(step > EXPLORE ? 1 : STRIKES, step > EXPLORE ? 50 : PATIENCE)) {
                keep();
                pool.clear();
                shrink(step);
            } else if (step > EXPLORE) {
                step = Math.max(EXPLORE, step / 2);
                shrink(step);
            } else {
                pool.add(crowd.snapshot());
                pool.sort(Comparator.comparingDouble(Crowd.Snapshot::overlap));
                int pick = (int) Math.min(pool.size() - 1, Math.abs(random.nextGaussian()) * 0.25 * pool.size());
                crowd.restore(pool.get(pick));
                swap();
            }
        }
    }

    void compress(BooleanSupplier halt, double progress) {}

    private void keep() {
        double top = 0;
        for (int i = 0; i < crowd.n; i++) {
            top = Math.max(top, crowd.boxY1[i]);
        }
        crowd.length = top;
        incumbent = crowd.snapshot();
        found.accept(incumbent);
    }

    /** Takes a share of the length away at a random cut; what lies beyond it moves up. */
    private void shrink(double share) {
        crowd.restore(incumbent);
        double length = Math.floor(crowd.length * (1 - share));
        double gone = crowd.length - length;
        double cut = random.nextDouble() * length;
        crowd.length = length;
        for (int i = 0; i < crowd.n; i++) {
            double middle = (crowd.boxY0[i] + crowd.boxY1[i]) / 2;
            double to = middle > cut ? crowd.y[i] - gone : crowd.y[i];
            int v = crowd.variant[i];
            to = Math.max(-crowd.bed.minY[v], Math.min(length - crowd.bed.maxY[v], to));
            crowd.move(i, v, crowd.x[i], to);
        }
    }

    /** Two large parts of different kinds change places. */
    private void swap() {
        Bed bed = crowd.bed;
        double largest = 0;
        for (double a : bed.area) {
            largest = Math.max(largest, a);
        }
        List<Integer> large = new ArrayList<>();
        for (int i = 0; i < crowd.n; i++) {
            if (bed.area[i] > 0.25 * largest) {
                large.add(i);
            }
        }
        int a = large.get(random.below(large.size()));
        List<Integer> others =
                large.stream().filter(i -> bed.kind[i] != bed.kind[a]).toList();
        if (others.isEmpty()) {
            return;
        }
        int b = others.get(random.below(others.size()));
        double ax = crowd.boxX0[a] + crowd.boxX1[a];
        double ay = crowd.boxY0[a] + crowd.boxY1[a];
        centre(a, crowd.boxX0[b] + crowd.boxX1[b], crowd.boxY0[b] + crowd.boxY1[b]);
        centre(b, ax, ay);
    }

    private void centre(int i, double twiceX, double twiceY) {
        Bed bed = crowd.bed;
        int v = crowd.variant[i];
        double px = Math.rint((twiceX - bed.minX[v] - bed.maxX[v]) / 2);
        double py = Math.rint((twiceY - bed.minY[v] - bed.maxY[v]) / 2);
        crowd.move(
                i,
                v,
                Math.max(bed.fromX[v], Math.min(bed.toX[v], px)),
                Math.max(-bed.minY[v], Math.min(crowd.length - bed.maxY[v], py)));
    }

    Crowd.Snapshot incumbent() {
        return incumbent;
    }
}
