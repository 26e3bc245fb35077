package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import stretchwright.lay.nest.Convex;
import stretchwright.lay.nest.Enclosing;
import stretchwright.lay.nest.NoFits;
import stretchwright.lay.nest.Shape;
import stretchwright.lay.nest.Stack;

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
    /** Work before it ends: some 0.4 s; legs and a band need a hundredth of it. */
    private static final long WORK = 50_000_000;
    /** Work of a range, whatever is tried in it; so many fewer are kept. */
    private static final int RANGE = 200;
    /** More corners, or convex parts, than this of an outline, or coordinates beyond this, in units: nothing is proved. */
    private static final int MOST_CORNERS = 400;

    private static final int MOST_PARTS = 100;
    private static final long FARTHEST = 3_000_000;
    /** Nearer than this, in units, to what the pieces need in some place the halving brings no more. */
    private static final double CLOSE = 2;
    /** Rounding up to a whole unit, as the length of a lay is one: what may be rounding of sums does not count. */
    private static final double ROUNDING = 1e-3;

    private final List<Cut> cuts;
    private final long width;
    private final long gap;
    private final double known;
    private final BooleanSupplier stop;
    private final List<Shape> shapes = new ArrayList<>();
    /** Of each piece the numbers of its shapes, those that are not turned first. */
    private final int[][] turns;
    /** How many of these are not turned. */
    private final int[] unturned;

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

    private StackFloor(List<Cut> cuts, long width, boolean turned, long gap, long known, BooleanSupplier stop) {
        this.stop = stop;
        this.cuts = cuts.stream()
                .sorted(Comparator.comparingDouble((Cut c) -> c.outline().area())
                        .reversed())
                .limit(MOST_PIECES)
                .toList();
        this.width = width;
        this.gap = gap;
        this.known = known;
        this.turns = new int[this.cuts.size()][];
        this.unturned = new int[turns.length];
        for (int i = 0; i < turns.length; i++) {
            number(i, turned);
        }
    }

    /**
     * @param turned whether pieces that are not at the fold may be turned by half a turn
     * @param gap that is kept between pieces, in units
     * @param known the length of a lay, in units: no more than this is proved
     * @param stop ends the halving
     * @return in units; 0 where nothing is proved
     */
    static long under(List<Cut> cuts, long width, boolean turned, long gap, long known, BooleanSupplier stop) {
        return new StackFloor(cuts, width, turned, gap, known, stop).proved();
    }

    private boolean goOn() {
        return work < WORK && !stop.getAsBoolean();
    }

    private long proved() {
        if (shapes.stream().anyMatch(s -> s.corners() > MOST_CORNERS || farthest(s) > FARTHEST) || width > FARTHEST) {
            return 0;
        }
        List<List<long[][]>> parts = shapes.stream().map(Convex::parts).toList();
        if (parts.stream().anyMatch(p -> p.size() > MOST_PARTS)) {
            return 0;
        }
        NoFits noFits = new NoFits(parts);
        double proved = 0;
        // more pieces prove no less, but what is as good as the lay known is enough
        for (int n = 2; n <= cuts.size() && (1 + Lay.NOTHING) * proved < known && goOn(); n++) {
            proved = Math.max(proved, ofLargest(n, new Stack(n, shapes, noFits, gap, known)));
        }
        return (long) Math.ceil(proved - ROUNDING);
    }

    private static long farthest(Shape s) {
        return Math.max(Math.max(s.maxX, s.maxY), Math.max(-s.minX, -s.minY));
    }

    private void number(int i, boolean turned) {
        Cut cut = cuts.get(i);
        for (int k = 0; k < i; k++) {
            if (cuts.get(k).outline().equals(cut.outline()) && cuts.get(k).atFold() == cut.atFold()) {
                turns[i] = turns[k];
                unturned[i] = unturned[k];
                return;
            }
        }
        List<Shape> own = new ArrayList<>();
        own.add(Enclosing.inside(Shape.of(cut.outline()), OFF));
        if (cut.mayComeMirrored()) {
            addUnlessThere(own, mirrored(own.get(0)));
        }
        unturned[i] = own.size();
        for (int k = 0; k < unturned[i] && turned && !cut.atFold(); k++) {
            addUnlessThere(own, halfTurned(own.get(k)));
        }
        turns[i] = IntStream.range(shapes.size(), shapes.size() + own.size()).toArray();
        shapes.addAll(own);
    }

    private static void addUnlessThere(List<Shape> shapes, Shape shape) {
        if (shapes.stream().noneMatch(s -> corners(s).equals(corners(shape)))) {
            shapes.add(shape);
        }
    }

    private static Shape mirrored(Shape shape) {
        return Shape.of(Arrays.stream(shape.x).map(v -> -v).toArray(), shape.y);
    }

    private static Shape halfTurned(Shape shape) {
        return Shape.of(
                Arrays.stream(shape.x).map(v -> -v).toArray(),
                Arrays.stream(shape.y).map(v -> -v).toArray());
    }

    /** The corners in their order, from the lowest of those on the left on, wherever the shape lies. */
    private static List<List<Long>> corners(Shape shape) {
        List<List<Long>> out = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < shape.corners(); i++) {
            out.add(List.of(shape.x[i] - shape.minX, shape.y[i] - shape.minY));
            boolean lower = shape.x[i] == shape.x[first] && shape.y[i] < shape.y[first];
            first = shape.x[i] < shape.x[first] || lower ? i : first;
        }
        Collections.rotate(out, -first);
        return out;
    }

    private double ofLargest(int n, Stack stack) {
        PriorityQueue<Range> open = new PriorityQueue<>(Comparator.comparingDouble(Range::least));
        everywhere(new int[n], 0, stack, open);
        double needed = known;
        long before = work;
        for (int ranges = 0; !open.isEmpty() && goOn(); ranges++) {
            work = before + stack.work() + (long) RANGE * ranges;
            Range range = open.remove();
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

    /** All places, for every way to turn the pieces. */
    private void everywhere(int[] variant, int i, Stack stack, PriorityQueue<Range> open) {
        int n = variant.length;
        if (i < n) {
            int tried = i == 0 && firstStays(n) ? unturned[0] : turns[i].length;
            for (int k = 0; k < tried; k++) {
                variant[i] = turns[i][k];
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

    /** Where the whole lay may be turned by half a turn the first piece need not be. */
    private boolean firstStays(int n) {
        return unturned[0] < turns[0].length && cuts.stream().limit(n).noneMatch(Cut::atFold);
    }

    /**
     * Like pieces lie in their order from the left, but the first, where it was chosen as one that is not turned; what is
     * no shorter than the lay known is left out.
     */
    private void add(Range range, Stack stack, PriorityQueue<Range> open) {
        int n = range.from.length;
        for (int i = 0; i < n; i++) {
            boolean ordered = i > (firstStays(n) ? 1 : 0) && turns[i] == turns[i - 1];
            if (range.from[i] > range.to[i] || ordered && range.from[i - 1] > range.to[i]) {
                return;
            }
        }
        double least = Math.max(range.least, stack.least(range.variant, range.from, range.to));
        if (least < known) {
            open.add(new Range(range.variant, range.from, range.to, least));
        }
    }
}
