package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * An outline cut into slabs by the lines through its corners: trapezoids with two sides parallel to the sweep, sorted
 * by where they begin. Named for a sweep along u; v is the other axis.
 *
 * <p>In: corners in whole units, a simple outline. Out: trapezoids whose ends are whole units, so that heights at
 * their ends are fractions of whole numbers and can be compared exactly. The interior of the outline is, but for the
 * slab ends, the union of the trapezoids' interiors.
 */
public final class Slabs {
    final int count;
    final long[] begin;
    final long[] end;
    /** Largest end among the slabs up to each; lets a search skip those that end too early. */
    final long[] reach;

    final double[] low;
    final double[] lowSlope;
    final double[] high;
    final double[] highSlope;
    private final Edge[] lowEdge;
    private final Edge[] highEdge;

    /** An edge of the outline, from smaller to larger u; never along v. */
    record Edge(long u, long v, long du, long dv) {
        static Edge of(long u0, long v0, long u1, long v1) {
            return u0 < u1 ? new Edge(u0, v0, u1 - u0, v1 - v0) : new Edge(u1, v1, u0 - u1, v0 - v1);
        }

        double slope() {
            return (double) dv / du;
        }

        double at(double where) {
            return v + slope() * (where - u);
        }

        /** The whole part (rounded down) of the height at a whole u. */
        long whole(long where) {
            return dv == 0 ? v : v + Math.floorDiv(dv * (where - u), du);
        }

        /** What is left above the whole part, in parts of du. */
        long rest(long where) {
            return dv == 0 ? 0 : Math.floorMod(dv * (where - u), du);
        }
    }

    private record Trapezoid(long begin, long end, Edge low, Edge high) {}

    private Slabs(List<Trapezoid> all) {
        count = all.size();
        begin = all.stream().mapToLong(Trapezoid::begin).toArray();
        end = all.stream().mapToLong(Trapezoid::end).toArray();
        reach = end.clone();
        low = all.stream().mapToDouble(t -> t.low.at(t.begin)).toArray();
        high = all.stream().mapToDouble(t -> t.high.at(t.begin)).toArray();
        lowSlope = all.stream().mapToDouble(t -> t.low.slope()).toArray();
        highSlope = all.stream().mapToDouble(t -> t.high.slope()).toArray();
        lowEdge = all.stream().map(Trapezoid::low).toArray(Edge[]::new);
        highEdge = all.stream().map(Trapezoid::high).toArray(Edge[]::new);
        for (int i = 1; i < count; i++) {
            reach[i] = Math.max(reach[i], reach[i - 1]);
        }
    }

    static Slabs of(long[] u, long[] v) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < u.length; i++) {
            int j = (i + 1) % u.length;
            if (u[i] != u[j]) {
                edges.add(Edge.of(u[i], v[i], u[j], v[j]));
            }
        }
        long[] cuts = Arrays.stream(u).sorted().distinct().toArray();
        List<Trapezoid> done = new ArrayList<>();
        List<Trapezoid> open = List.of();
        for (int k = 0; k + 1 < cuts.length; k++) {
            List<Trapezoid> now = continued(open, slab(edges, cuts[k], cuts[k + 1]), done);
            open = now;
        }
        done.addAll(open);
        done.sort(Comparator.comparingLong(Trapezoid::begin).thenComparingDouble(t -> t.low.at(t.begin)));
        return new Slabs(done);
    }

    private static List<Trapezoid> slab(List<Edge> edges, long from, long to) {
        double middle = (from + to) / 2.0;
        List<Edge> across = edges.stream()
                .filter(e -> e.u <= from && e.u + e.du >= to)
                .sorted(Comparator.comparingDouble(e -> e.at(middle)))
                .toList();
        List<Trapezoid> out = new ArrayList<>();
        for (int i = 0; i + 1 < across.size(); i += 2) {
            out.add(new Trapezoid(from, to, across.get(i), across.get(i + 1)));
        }
        return out;
    }

    /** Joins slabs that lie between the same two edges; those that end here go to done. */
    private static List<Trapezoid> continued(List<Trapezoid> open, List<Trapezoid> next, List<Trapezoid> done) {
        List<Trapezoid> ended = new ArrayList<>(open);
        List<Trapezoid> out = new ArrayList<>();
        for (Trapezoid t : next) {
            Trapezoid before = ended.stream()
                    .filter(o -> o.low == t.low && o.high == t.high)
                    .findFirst()
                    .orElse(t);
            ended.removeIf(e -> e == before);
            out.add(new Trapezoid(before.begin, t.end, t.low, t.high));
        }
        done.addAll(ended);
        return out;
    }

    /** The first slab that may end beyond u. */
    int firstBeyond(long u) {
        int from = 0;
        int to = count;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (reach[middle] > u) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return from;
    }

    double low(int i, long u) {
        return low[i] + lowSlope[i] * (u - begin[i]);
    }

    double high(int i, long u) {
        return high[i] + highSlope[i] * (u - begin[i]);
    }

    Edge lowEdge(int i) {
        return lowEdge[i];
    }

    Edge highEdge(int i) {
        return highEdge[i];
    }

    /** The sum of the heights of the outline's sections on the line through u, which should not be a corner's. */
    public double section(double u) {
        double sum = 0;
        for (int i = 0; i < count && begin[i] < u; i++) {
            if (u < end[i]) {
                sum += high[i] - low[i] + (highSlope[i] - lowSlope[i]) * (u - begin[i]);
            }
        }
        return sum;
    }
}
