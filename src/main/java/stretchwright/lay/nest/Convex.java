package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a simple outline into convex parts without new corners: ears are clipped off, then parts are joined again
 * across every diagonal that leaves both its ends convex (Hertel and Mehlhorn 1983: at most four times as many parts
 * as needed).
 *
 * <p>All in whole units: the parts cover the outline exactly and share only borders.
 */
public final class Convex {
    private Convex() {}

    /** Convex parts, counter-clockwise, as {x, y}. */
    public static List<long[][]> parts(Shape shape) {
        List<long[]> corners = straightened(shape);
        List<List<long[]>> parts = new ArrayList<>();
        while (corners.size() > 3) {
            int ear = ear(corners);
            if (ear < 0) {
                break;
            }
            parts.add(List.of(before(corners, ear), corners.get(ear), after(corners, ear)));
            corners.remove(ear);
            straighten(corners);
        }
        if (corners.size() >= 3) {
            parts.add(List.copyOf(corners));
        }
        return joined(parts).stream()
                .map(p -> new long[][] {
                    p.stream().mapToLong(c -> c[0]).toArray(),
                    p.stream().mapToLong(c -> c[1]).toArray()
                })
                .toList();
    }

    private static List<long[]> straightened(Shape shape) {
        List<long[]> out = new ArrayList<>();
        for (int i = 0; i < shape.corners(); i++) {
            out.add(new long[] {shape.x[i], shape.y[i]});
        }
        straighten(out);
        return out;
    }

    /** Drops corners on a straight line. */
    private static void straighten(List<long[]> corners) {
        for (int i = 0; i < corners.size() && corners.size() > 3; ) {
            if (turn(before(corners, i), corners.get(i), after(corners, i)) == 0) {
                corners.remove(i);
                i = Math.max(0, i - 1);
            } else {
                i++;
            }
        }
    }

    private static long[] before(List<long[]> corners, int i) {
        return corners.get((i + corners.size() - 1) % corners.size());
    }

    private static long[] after(List<long[]> corners, int i) {
        return corners.get((i + 1) % corners.size());
    }

    static long turn(long[] a, long[] b, long[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }

    /** The ear with the shortest cut; none only where the outline touches itself. */
    private static int ear(List<long[]> corners) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            long[] a = before(corners, i);
            long[] c = after(corners, i);
            double cut = Math.hypot(c[0] - a[0], c[1] - a[1]);
            if (cut < least && turn(a, corners.get(i), c) > 0 && empty(corners, i)) {
                best = i;
                least = cut;
            }
        }
        return best;
    }

    private static boolean empty(List<long[]> corners, int ear) {
        long[] a = before(corners, ear);
        long[] b = corners.get(ear);
        long[] c = after(corners, ear);
        for (long[] p : corners) {
            boolean own = p == a || p == b || p == c;
            if (!own && turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static List<List<long[]>> joined(List<List<long[]>> parts) {
        List<List<long[]>> out = new ArrayList<>(parts);
        for (int i = 0; i < out.size(); i++) {
            for (int j = i + 1; j < out.size(); j++) {
                List<long[]> both = join(out.get(i), out.get(j));
                if (!both.isEmpty()) {
                    out.set(i, both);
                    out.remove(j);
                    j = i;
                }
            }
        }
        return out;
    }

    /** Both parts as one if they share an edge and stay convex; empty otherwise. */
    private static List<long[]> join(List<long[]> one, List<long[]> other) {
        for (int i = 0; i < one.size(); i++) {
            for (int j = 0; j < other.size(); j++) {
                if (same(one.get(i), after(other, j)) && same(after(one, i), other.get(j))) {
                    List<long[]> both = new ArrayList<>();
                    for (int k = 1; k <= one.size(); k++) {
                        both.add(one.get((i + k) % one.size()));
                    }
                    for (int k = 2; k < other.size(); k++) {
                        both.add(other.get((j + k) % other.size()));
                    }
                    return convex(both) ? both : List.of();
                }
            }
        }
        return List.of();
    }

    private static boolean same(long[] a, long[] b) {
        return a[0] == b[0] && a[1] == b[1];
    }

    private static boolean convex(List<long[]> corners) {
        for (int i = 0; i < corners.size(); i++) {
            if (turn(before(corners, i), corners.get(i), after(corners, i)) < 0) {
                return false;
            }
        }
        return true;
    }
}
