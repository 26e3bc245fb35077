package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A length that no lay goes below, from the largest pieces alone: over all places that they can have across the cloth, how
 * long they are at least where those that cannot lie beside each other lie above each other.
 *
 * <p>Places across are ranges, halved again and again, those of the least length first; so what is proved holds whenever
 * the halving ends. Why it holds: docs/maths/lay.md. Counted in work, so the same input gives the same floor.
 */
final class StackFloor {
    /** Outlines with fewer corners, inside the true ones, stand off these no more than this, in units of 0.01 mm. */
    private static final double OFF = 100;
    /** So many of the largest pieces are held against each other at most. */
    private static final int MOST_PIECES = 6;
    /** Parts of no-fit polygons looked at before it ends: some 0.4 s; legs and a band need a hundredth of it. */
    private static final long WORK = 50_000_000;
    /** Nearer than this, in units, to what the pieces need in some place the halving brings no more. */
    private static final double CLOSE = 2;
    /** Rounding up to a whole unit, as the length of a lay is one: what may be rounding of sums does not count. */
    private static final double ROUNDING = 1e-3;

    private final List<Cut> cuts;
    private final long width;
    private final long gap;
    private final double known;
    private final List<Shape> shapes = new ArrayList<>();
    private final int[][] variants;
    private final NoFits noFits;
    private long work;

    /** How the first pieces are turned, where they may lie across, and how long they are there at least. */
    private record Range(int[] variant, long[] from, long[] to, double least) {
        int widest() {
            int widest = 0;
            for (int i = 1; i < from.length; i++) {
                widest = to[i] - from[i] > to[widest] - from[widest] ? i : widest;
            }
            return widest;
        }

        long[] middle() {
            long[] out = new long[from.length];
            for (int i = 0; i < out.length; i++) {
                out[i] = Math.floorDiv(from[i] + to[i], 2);
            }
            return out;
        }

        Range with(int i, long least, long most) {
            long[] f = from.clone();
            long[] t = to.clone();
            f[i] = least;
            t[i] = most;
            return new Range(variant, f, t, this.least);
        }
    }

    private StackFloor(List<Cut> cuts, long width, boolean turned, long gap, long known) {
        this.cuts = cuts.stream()
                .sorted(Comparator.comparingDouble((Cut c) -> c.outline().area())
                        .reversed())
                .limit(MOST_PIECES)
                .toList();
        this.width = width;
        this.gap = gap;
        this.known = known;
        this.variants = new int[this.cuts.size()][];
        for (int i = 0; i < variants.length; i++) {
            variants[i] = variants(i, turned);
        }
        this.noFits = new NoFits(shapes.stream().map(Convex::parts).toList());
    }

    /**
     * @param turned whether pieces that are not at the fold may be turned by half a turn
     * @param gap that is kept between pieces, in units
     * @param known the length of a lay, in units: no more than this is proved
     * @return in units; 0 where nothing is proved
     */
    static long under(List<Cut> cuts, long width, boolean turned, long gap, long known) {
        StackFloor floor = new StackFloor(cuts, width, turned, gap, known);
        double proved = 0;
        for (int n = 2; n <= floor.cuts.size() && (1 + Lay.NOTHING) * proved < known && floor.work < WORK; n++) {
            proved = Math.max(proved, floor.ofLargest(n));
        }
        return (long) Math.ceil(proved - ROUNDING);
    }

    private int[] variants(int i, boolean turned) {
        Cut cut = cuts.get(i);
        for (int k = 0; k < i; k++) {
            if (cuts.get(k).outline().equals(cut.outline()) && cuts.get(k).atFold() == cut.atFold()) {
                return variants[k];
            }
        }
        int first = shapes.size();
        shapes.add(Enclosing.inside(Shape.of(cut.outline()), OFF));
        if (turned && !cut.atFold()) {
            shapes.add(halfTurned(shapes.get(first)));
        }
        return alike(shapes.get(first), shapes.get(shapes.size() - 1))
                ? new int[] {first}
                : new int[] {first, first + 1};
    }

    private static Shape halfTurned(Shape shape) {
        return Shape.of(
                Arrays.stream(shape.x).map(v -> -v).toArray(),
                Arrays.stream(shape.y).map(v -> -v).toArray());
    }

    private static boolean alike(Shape one, Shape other) {
        return corners(one).equals(corners(other));
    }

    private static List<List<Long>> corners(Shape shape) {
        List<List<Long>> out = new ArrayList<>();
        for (int i = 0; i < shape.corners(); i++) {
            out.add(List.of(shape.x[i] - shape.minX, shape.y[i] - shape.minY));
        }
        out.sort(Comparator.comparingLong((List<Long> c) -> c.get(0)).thenComparingLong(c -> c.get(1)));
        return out;
    }

    private double ofLargest(int n) {
        Stack stack = new Stack(n, shapes, noFits, gap, known);
        PriorityQueue<Range> open = new PriorityQueue<>(Comparator.comparingDouble(Range::least));
        everywhere(new int[n], 0, stack, open);
        double needed = known;
        long before = work;
        while (!open.isEmpty() && work < WORK) {
            Range range = open.remove();
            work = before + stack.work();
            long[] middle = range.middle();
            needed = Math.min(needed, stack.least(range.variant, middle, middle));
            if (range.least >= needed - CLOSE) {
                return range.least;
            }
            int i = range.widest();
            add(range.with(i, range.from[i], middle[i]), stack, open);
            add(range.with(i, middle[i] + 1, range.to[i]), stack, open);
        }
        return open.isEmpty() ? known : open.element().least;
    }

    /** All places, for every way to turn the pieces; where all may be turned, the first need not be. */
    private void everywhere(int[] variant, int i, Stack stack, PriorityQueue<Range> open) {
        int n = variant.length;
        if (i < n) {
            boolean first = i == 0 && cuts.stream().limit(n).noneMatch(Cut::atFold);
            for (int v : first ? new int[] {variants[0][0]} : variants[i]) {
                variant[i] = v;
                everywhere(variant, i + 1, stack, open);
            }
            return;
        }
        long[] from = new long[n];
        long[] to = new long[n];
        for (int k = 0; k < n; k++) {
            Shape shape = shapes.get(variant[k]);
            boolean atFold = cuts.get(k).atFold();
            from[k] = atFold ? 0 : -shape.minX;
            to[k] = atFold ? 0 : width - shape.maxX;
        }
        add(new Range(variant.clone(), from, to, 0), stack, open);
    }

    /** Like pieces lie in their order from the left; what is no shorter than the lay known is left out. */
    private void add(Range range, Stack stack, PriorityQueue<Range> open) {
        for (int i = 0; i < range.from.length; i++) {
            boolean disorder = i > 0 && variants[i] == variants[i - 1] && range.from[i - 1] > range.to[i];
            if (disorder || range.from[i] > range.to[i]) {
                return;
            }
        }
        double least = Math.max(range.least, stack.least(range.variant, range.from, range.to));
        if (least < known) {
            open.add(new Range(range.variant, range.from, range.to, least));
        }
    }
}
