package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Parts on the bed that may overlap: where each lies, how deep each pair overlaps, and how much each pair weighs.
 *
 * <p>All positions are whole units, so a crowd without overlap is a valid layout. Every part lies inside the bed of
 * the present length at all times. Flat arrays: the search reads and writes nothing else.
 */
final class Crowd {
    /** Work of a place tried, whatever lies there. */
    private static final int PLACE = 50;
    /** Up to so many parts are all looked at, sooner than it is asked which of them lie near. */
    private static final int FEW = 12;

    /** A pair that overlaps gets heavier by this factor a round, and by more the deeper it is. */
    private static final double GROWTH = 1.2;

    private static final double MORE_GROWTH = 0.8;
    /** A pair that does not overlap gets lighter again, slowly: what was learnt about it serves the next attempt. */
    private static final double DECAY = 0.98;

    private static final double HEAVIEST = 1e9;

    final Bed bed;
    /** All parts; those from {@code movable} on never move. */
    final int n;

    final int movable;
    final int[] variant;
    final double[] x;
    final double[] y;
    /** Boxes of the parts where they lie. */
    final double[] boxX0;

    final double[] boxX1;
    final double[] boxY0;
    final double[] boxY1;
    final double[] depth;
    final double[] weight;
    double length;
    private long work;
    private final Near near;

    Crowd(Bed bed, double longest) {
        this.bed = bed;
        this.n = bed.all();
        this.movable = bed.movable();
        variant = new int[n];
        x = new double[n];
        y = new double[n];
        boxX0 = new double[n];
        boxX1 = new double[n];
        boxY0 = new double[n];
        boxY1 = new double[n];
        depth = new double[n * n];
        weight = new double[n * n];
        near = new Near(n, bed.width, longest);
        Arrays.fill(weight, 1);
    }

    /** A state that can be gone back to: positions, depths; weights are not part of it. */
    record Snapshot(int[] variant, double[] x, double[] y, double length, double overlap) {
        /** As a layout; it holds where nothing overlaps. */
        Layout layout(Bed bed) {
            List<Layout.Spot> spots = new ArrayList<>();
            for (int i = 0; i < bed.movable(); i++) {
                int v = variant[i] - bed.variants[i][0];
                Part part = bed.parts.get(i);
                long top = (long) y[i] + part.variants().get(v).exact().maxY;
                spots.add(new Layout.Spot(part, v, (long) x[i], (long) y[i], top));
            }
            return new Layout(
                    spots, spots.stream().mapToLong(Layout.Spot::top).max().orElse(0));
        }
    }

    Snapshot snapshot() {
        return new Snapshot(variant.clone(), x.clone(), y.clone(), length, overlap());
    }

    void restore(Snapshot s) {
        length = s.length;
        for (int i = 0; i < n; i++) {
            put(i, s.variant[i], s.x[i], s.y[i]);
        }
        measureAll();
    }

    /** Takes over a layout of the same parts in the same order. */
    void start(Layout layout) {
        length = layout.length();
        for (int i = 0; i < movable; i++) {
            Layout.Spot s = layout.spots().get(i);
            put(i, bed.variants[i][s.variant()], s.x(), s.y());
        }
        for (int i = movable; i < n; i++) {
            put(i, bed.variants[i][0], 0, 0);
        }
        measureAll();
    }

    private void put(int i, int v, double px, double py) {
        variant[i] = v;
        x[i] = px;
        y[i] = py;
        boxX0[i] = px + bed.minX[v];
        boxX1[i] = px + bed.maxX[v];
        boxY0[i] = py + bed.minY[v];
        boxY1[i] = py + bed.maxY[v];
        near.put(i, boxX0[i], boxX1[i], boxY0[i], boxY1[i]);
    }

    /** Moves one part and measures its overlaps anew. */
    void move(int i, int v, double px, double py) {
        put(i, v, px, py);
        measure(i);
    }

    void measureAll() {
        for (int i = 0; i < n; i++) {
            measure(i);
        }
    }

    private void measure(int i) {
        for (int j = 0; j < n; j++) {
            if (j != i && (i < movable || j < movable)) {
                double d = boxX0[i] < boxX1[j] && boxX0[j] < boxX1[i] && boxY0[i] < boxY1[j] && boxY0[j] < boxY1[i]
                        ? depth(variant[i], x[i], y[i], j)
                        : 0;
                depth[i * n + j] = d;
                depth[j * n + i] = d;
            }
        }
    }

    private double depth(int v, double px, double py, int j) {
        return depth(v, px, py, j, Double.POSITIVE_INFINITY);
    }

    /** How deep part j is overlapped if one of that variant lay there; anything not below enough once it is reached. */
    private double depth(int v, double px, double py, int j, double enough) {
        int w = variant[j];
        NoFit noFit = v <= w ? bed.noFits.of(v, w) : bed.noFits.of(w, v);
        work += noFit.size();
        double bulk = bed.bulk[v] * bed.bulk[w];
        double most = enough / bulk;
        double depth = v <= w ? noFit.depth(px - x[j], py - y[j], most) : noFit.depth(x[j] - px, y[j] - py, most);
        return depth * bulk;
    }

    /** Numbers of no-fit polygons read so far, and some for every place tried: the unit in which all effort is counted. */
    long work() {
        return work;
    }

    /** The weighted overlap of part i if it lay there; anything not below the limit once it is reached. */
    double weighed(int i, int v, double px, double py, double limit) {
        double x0 = px + bed.minX[v];
        double x1 = px + bed.maxX[v];
        double y0 = py + bed.minY[v];
        double y1 = py + bed.maxY[v];
        boolean few = n <= FEW;
        int fromX = few ? 0 : near.from(x0);
        int toX = few ? 0 : near.to(x1);
        int fromY = few ? 0 : near.fromAlong(y0);
        int toY = few ? 0 : near.toAlong(y1);
        double sum = 0;
        work += PLACE;
        for (int word = 0; word < near.words; word++) {
            for (long bits = few ? (1L << n) - 1 : near.within(word, fromX, toX, fromY, toY);
                    bits != 0;
                    bits &= bits - 1) {
                int j = word * Long.SIZE + Long.numberOfTrailingZeros(bits);
                if (y0 < boxY1[j] && boxY0[j] < y1 && x0 < boxX1[j] && boxX0[j] < x1 && j != i) {
                    double w = weight[i * n + j];
                    sum += w * depth(v, px, py, j, (limit - sum) / w);
                    if (sum >= limit) {
                        return sum;
                    }
                }
            }
        }
        return sum;
    }

    /** The neighbour whose weighted overlap is greatest if part i lay there; -1 where it is free. */
    int worst(int i, int v, double px, double py, int except) {
        int worst = -1;
        double most = 0;
        int fromX = near.from(px + bed.minX[v]);
        int toX = near.to(px + bed.maxX[v]);
        int fromY = near.fromAlong(py + bed.minY[v]);
        int toY = near.toAlong(py + bed.maxY[v]);
        for (int word = 0; word < near.words; word++) {
            for (long bits = near.within(word, fromX, toX, fromY, toY); bits != 0; bits &= bits - 1) {
                int j = word * Long.SIZE + Long.numberOfTrailingZeros(bits);
                if (j != i && j != except) {
                    double d = depth(v, px, py, j) * weight[i * n + j];
                    if (d > most) {
                        most = d;
                        worst = j;
                    }
                }
            }
        }
        return worst;
    }

    /** The edge to leave neighbour j by: outward normal x and y, and offset, in coordinates of the bed. */
    double[] wayOut(int v, double px, double py, int j) {
        int w = variant[j];
        boolean first = v <= w;
        double @Nullable [] e = first
                ? bed.noFits.of(v, w).wayOut(px - x[j], py - y[j])
                : bed.noFits.of(w, v).wayOut(x[j] - px, y[j] - py);
        if (e == null) {
            throw new IllegalStateException("there is nothing to leave");
        }
        double sign = first ? 1 : -1;
        double nx = sign * e[0];
        double ny = sign * e[1];
        return new double[] {nx, ny, e[2] + nx * x[j] + ny * y[j]};
    }

    double weighed(int i) {
        double sum = 0;
        for (int j = 0; j < n; j++) {
            sum += depth[i * n + j] * weight[i * n + j];
        }
        return sum;
    }

    boolean overlaps(int i) {
        for (int j = 0; j < n; j++) {
            if (depth[i * n + j] > 0) {
                return true;
            }
        }
        return false;
    }

    /** The sum over all pairs, without weights; 0 exactly for a valid layout. */
    double overlap() {
        double sum = 0;
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < i; j++) {
                sum += depth[i * n + j];
            }
        }
        return sum;
    }

    double greatestDepth() {
        double most = 0;
        for (double d : depth) {
            most = Math.max(most, d);
        }
        return most;
    }

    /** Heavier where pairs overlap, by how deep; lighter where they no longer do. */
    void reweigh() {
        double most = greatestDepth();
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double d = depth[i * n + j];
                double w = weight[i * n + j];
                w = d > 0 ? Math.min(HEAVIEST, w * (GROWTH + MORE_GROWTH * d / most)) : Math.max(1, w * DECAY);
                weight[i * n + j] = w;
                weight[j * n + i] = w;
            }
        }
    }

    void forgetWeights() {
        Arrays.fill(weight, 1);
    }
}
