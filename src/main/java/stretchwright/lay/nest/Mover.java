package stretchwright.lay.nest;

import stretchwright.ground.RandomStream;

/**
 * Finds one part the place with the least weighted overlap: random places all over the bed and round its present one,
 * the best few refined by steps along and between the axes, and the best at last brought to exact contact.
 */
final class Mover {
    private static final int ALL_OVER = 25;
    private static final int NEAR = 15;
    private static final int KEPT = 3;
    /** Steps of the refinement, as shares of the part's smaller extent; below it contact is exact. */
    private static final double FROM = 0.1;

    private static final double TO = 0.02;
    /** A step that helped grows by this, one that did not shrinks. */
    private static final double LONGER = 1.1;

    private static final double SHORTER = 0.5;
    /** Moves out of neighbours before a place is taken as it is. */
    private static final int CONTACTS = 8;

    private final Crowd crowd;
    private final Bed bed;
    private final RandomStream random;
    private final Places best = new Places(KEPT);

    Mover(Crowd crowd, RandomStream random) {
        this.crowd = crowd;
        this.bed = crowd.bed;
        this.random = random;
    }

    /** Moves part i to the best place found; it stays where nothing better was. */
    void move(int i) {
        double present = crowd.weighed(i);
        best.clear();
        best.offer(crowd.variant[i], crowd.x[i], crowd.y[i], present, 0);
        allOver(i);
        near(i);
        int winner = 0;
        for (int k = 0; k < best.count(); k++) {
            refine(i, k);
            winner = best.value[k] < best.value[winner] ? k : winner;
        }
        contact(i, winner);
        if (best.value[winner] < present) {
            crowd.move(i, best.variant[winner], best.x[winner], best.y[winner]);
        }
    }

    private int turned(int i) {
        int[] variants = bed.variants[i];
        int v = variants.length == 1 ? variants[0] : variants[random.below(variants.length)];
        return bed.within(i, v, crowd.length);
    }

    private void allOver(int i) {
        for (int s = 0; s < ALL_OVER; s++) {
            int v = turned(i);
            double px = random.between(bed.fromX[v], bed.toX[v]);
            sample(i, v, px, random.between(-bed.minY[v], crowd.length - bed.maxY[v]));
        }
    }

    private void near(int i) {
        for (int s = 0; s < NEAR; s++) {
            int v = turned(i);
            double wide = (bed.maxX[v] - bed.minX[v]) / 2;
            double high = (bed.maxY[v] - bed.minY[v]) / 2;
            double cx = (crowd.boxX0[i] + crowd.boxX1[i] - bed.minX[v] - bed.maxX[v]) / 2;
            double cy = (crowd.boxY0[i] + crowd.boxY1[i] - bed.minY[v] - bed.maxY[v]) / 2;
            sample(i, v, cx + random.between(-wide, wide), cy + random.between(-high, high));
        }
    }

    private double extent(int v) {
        return Math.min(bed.maxX[v] - bed.minX[v], bed.maxY[v] - bed.minY[v]);
    }

    private void sample(int i, int v, double px, double py) {
        double cx = bed.onX(v, px);
        double cy = bed.onY(v, py, crowd.length);
        double limit = best.limit();
        double value = crowd.weighed(i, v, cx, cy, limit);
        if (value < limit) {
            best.offer(v, cx, cy, value, FROM * extent(v));
        }
    }

    private void refine(int i, int k) {
        double extent = extent(best.variant[k]);
        double step = FROM * extent;
        double least = Math.max(1, TO * extent);
        while (best.value[k] > 0 && step >= least) {
            int axis = random.below(4);
            double dx = axis == 1 ? 0 : step;
            double dy = axis == 0 ? 0 : axis == 3 ? -step : step;
            double x = best.x[k];
            double y = best.y[k];
            step *= improved(i, k, x + dx, y + dy) || improved(i, k, x - dx, y - dy) ? LONGER : SHORTER;
        }
    }

    private boolean improved(int i, int k, double px, double py) {
        int v = best.variant[k];
        double cx = bed.onX(v, px);
        double cy = bed.onY(v, py, crowd.length);
        double value = crowd.weighed(i, v, cx, cy, best.value[k]);
        if (value < best.value[k]) {
            best.value[k] = value;
            best.x[k] = cx;
            best.y[k] = cy;
            return true;
        }
        return false;
    }

    /** Moves out of the worst neighbour, or to where two neighbours are touched at once, as long as that helps. */
    private void contact(int i, int k) {
        boolean better = true;
        for (int turn = 0; turn < CONTACTS && better && best.value[k] > 0; turn++) {
            int v = best.variant[k];
            int a = crowd.worst(i, v, best.x[k], best.y[k], -1);
            double[] one = crowd.wayOut(v, best.x[k], best.y[k], a);
            double off = one[2] - one[0] * best.x[k] - one[1] * best.y[k];
            double px = away(best.x[k] + off * one[0], one[0]);
            double py = away(best.y[k] + off * one[1], one[1]);
            better = improved(i, k, px, py) || corner(i, k, one, a, bed.onX(v, px), bed.onY(v, py, crowd.length));
        }
    }

    private static double away(double value, double normal) {
        return normal > 0 ? Math.ceil(value) : normal < 0 ? Math.floor(value) : Math.rint(value);
    }

    /** Tries the whole units round the point where the way out of one neighbour meets that of the next. */
    private boolean corner(int i, int k, double[] one, int a, double px, double py) {
        int v = best.variant[k];
        int b = crowd.worst(i, v, px, py, a);
        if (b < 0) {
            return false;
        }
        double[] other = crowd.wayOut(v, px, py, b);
        double det = one[0] * other[1] - one[1] * other[0];
        double qx = (one[2] * other[1] - one[1] * other[2]) / det;
        double qy = (one[0] * other[2] - one[2] * other[0]) / det;
        boolean better = false;
        for (int c = 0; c < 4 && det != 0 && !better; c++) {
            double cx = (c & 1) == 0 ? Math.floor(qx) : Math.ceil(qx);
            double cy = (c & 2) == 0 ? Math.floor(qy) : Math.ceil(qy);
            better = one[0] * cx + one[1] * cy >= one[2]
                    && other[0] * cx + other[1] * cy >= other[2]
                    && improved(i, k, cx, cy);
        }
        return better;
    }
}
