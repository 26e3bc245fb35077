package stretchwright.lay;

import stretchwright.ground.RandomStream;

/**
 * Finds one part the place with the least weighted overlap: random places all over the bed and round its present one,
 * the best few refined by steps along the axes, and at last brought to exact contact.
 */
final class Mover {
    static int ALL_OVER = 60;
    static int NEAR = 40;
    private static final int KEPT = 3;

    private final Crowd crowd;
    private final Bed bed;
    private final RandomStream random;
    private final int[] bestVariant = new int[KEPT];
    private final double[] bestX = new double[KEPT];
    private final double[] bestY = new double[KEPT];
    private final double[] best = new double[KEPT];
    private int kept;
    private long work;

    Mover(Crowd crowd, RandomStream random) {
        this.crowd = crowd;
        this.bed = crowd.bed;
        this.random = random;
    }

    long work() {
        return work;
    }

    /** Moves part i to the best place found; it stays where nothing better was. */
    void move(int i) {
        double present = crowd.weighed(i);
        kept = 0;
        offer(crowd.variant[i], crowd.x[i], crowd.y[i], present);
        int[] variants = bed.variants[i];
        for (int s = 0; s < ALL_OVER; s++) {
            int v = variants[random.below(variants.length)];
            sample(
                    i,
                    v,
                    random.between(bed.fromX[v], bed.toX[v]),
                    random.between(-bed.minY[v], crowd.length - bed.maxY[v]));
        }
        for (int s = 0; s < NEAR; s++) {
            int v = variants[random.below(variants.length)];
            double wide = (bed.maxX[v] - bed.minX[v]) * 0.5;
            double high = (bed.maxY[v] - bed.minY[v]) * 0.5;
            double cx = (crowd.boxX0[i] + crowd.boxX1[i] - bed.minX[v] - bed.maxX[v]) / 2;
            double cy = (crowd.boxY0[i] + crowd.boxY1[i] - bed.minY[v] - bed.maxY[v]) / 2;
            sample(i, v, cx + random.between(-wide, wide), cy + random.between(-high, high));
        }
        int winner = 0;
        for (int k = 0; k < kept; k++) {
            refine(i, k, 0.1, COARSE);
            if (best[k] < best[winner]) {
                winner = k;
            }
        }
        refine(i, winner, COARSE, FINE);
        contact(i, winner);
        if (best[winner] < present) {
            crowd.move(i, bestVariant[winner], bestX[winner], bestY[winner]);
        }
    }

    private double clampX(int v, double px) {
        return Math.rint(Math.max(bed.fromX[v], Math.min(bed.toX[v], px)));
    }

    private double clampY(int v, double py) {
        return Math.rint(Math.max(-bed.minY[v], Math.min(crowd.length - bed.maxY[v], py)));
    }

    private void sample(int i, int v, double px, double py) {
        double cx = clampX(v, px);
        double cy = clampY(v, py);
        double limit = kept < KEPT ? Double.POSITIVE_INFINITY : best[KEPT - 1];
        work++;
        double value = crowd.weighed(i, v, cx, cy, limit);
        if (value < limit) {
            offer(v, cx, cy, value);
        }
    }

    private void offer(int v, double px, double py, double value) {
        double close = 0.1 * Math.min(bed.maxX[v] - bed.minX[v], bed.maxY[v] - bed.minY[v]);
        for (int k = 0; k < kept; k++) {
            if (bestVariant[k] == v && Math.abs(bestX[k] - px) < close && Math.abs(bestY[k] - py) < close) {
                if (value >= best[k]) {
                    return;
                }
                for (int m = k; m + 1 < kept; m++) {
                    copy(m + 1, m);
                }
                kept--;
            }
        }
        int at = kept < KEPT ? kept++ : KEPT - 1;
        while (at > 0 && best[at - 1] > value) {
            copy(at - 1, at);
            at--;
        }
        bestVariant[at] = v;
        bestX[at] = px;
        bestY[at] = py;
        best[at] = value;
    }

    private void copy(int from, int to) {
        bestVariant[to] = bestVariant[from];
        bestX[to] = bestX[from];
        bestY[to] = bestY[from];
        best[to] = best[from];
    }

    static double COARSE = 0.02;
    static double FINE = 0.02;

    private void refine(int i, int k, double from, double to) {
        int v = bestVariant[k];
        double size = Math.min(bed.maxX[v] - bed.minX[v], bed.maxY[v] - bed.minY[v]);
        double step = from * size;
        double least = Math.max(1, to * size);
        while (best[k] > 0 && step >= least) {
            int axis = random.below(4);
            double dx = axis == 1 ? 0 : step;
            double dy = axis == 0 ? 0 : axis == 3 ? -step : step;
            step *= attempt(i, k, dx, dy) || attempt(i, k, -dx, -dy) ? 1.1 : 0.5;
        }
    }

    private boolean attempt(int i, int k, double dx, double dy) {
        int v = bestVariant[k];
        double px = clampX(v, bestX[k] + dx);
        double py = clampY(v, bestY[k] + dy);
        work++;
        double value = crowd.weighed(i, v, px, py, best[k]);
        if (value < best[k]) {
            best[k] = value;
            bestX[k] = px;
            bestY[k] = py;
            return true;
        }
        return false;
    }

    /** Moves out of the worst neighbour, then to where it leaves the two worst at once, while that helps. */
    private void contact(int i, int k) {
        int v = bestVariant[k];
        for (int turn = 0; turn < CONTACTS && best[k] > 0; turn++) {
            int a = crowd.worst(i, v, bestX[k], bestY[k], -1);
            double[] one = crowd.wayOut(v, bestX[k], bestY[k], a);
            double off = (one[2] - one[0] * bestX[k] - one[1] * bestY[k]) / (one[0] * one[0] + one[1] * one[1]);
            double px = away(bestX[k] + off * one[0], one[0]);
            double py = away(bestY[k] + off * one[1], one[1]);
            if (tryAt(i, k, px, py)) {
                continue;
            }
            int b = crowd.worst(i, v, clampX(v, px), clampY(v, py), a);
            if (b < 0) {
                return;
            }
            double[] other = crowd.wayOut(v, clampX(v, px), clampY(v, py), b);
            double det = one[0] * other[1] - one[1] * other[0];
            if (det == 0) {
                return;
            }
            double qx = (one[2] * other[1] - one[1] * other[2]) / det;
            double qy = (one[0] * other[2] - one[2] * other[0]) / det;
            boolean better = false;
            for (int c = 0; c < 4 && !better; c++) {
                double cx = (c & 1) == 0 ? Math.floor(qx) : Math.ceil(qx);
                double cy = (c & 2) == 0 ? Math.floor(qy) : Math.ceil(qy);
                better = one[0] * cx + one[1] * cy >= one[2]
                        && other[0] * cx + other[1] * cy >= other[2]
                        && tryAt(i, k, cx, cy);
            }
            if (!better) {
                return;
            }
        }
    }

    static int CONTACTS = 8;

    private static double away(double value, double normal) {
        return normal > 0 ? Math.ceil(value) : normal < 0 ? Math.floor(value) : Math.rint(value);
    }

    private boolean tryAt(int i, int k, double px, double py) {
        return attempt(i, k, px - bestX[k], py - bestY[k]);
    }
}
