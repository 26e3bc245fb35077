package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * Places parts one after another, each as low as it will go, then as far left, in the best of its variants; holes
 * between earlier parts are filled too (bottom-left fill, after Burke et al. 2006, Oper. Res. 54, from memory).
 *
 * <p>Positions across are tried where corners come under corners and on an even step; the best is refined to the
 * unit and pushed left and down until it touches. The height at each position is exact (Blocked).
 */
public final class BottomLeft {
    /** Even steps across the cloth; finer ones were not measurably better, refining finds the rest. */
    private static final int STEPS = 120;
    /** Pairs of corners tried per part; beyond it only the parts' outermost corners are used. */
    private static final int PAIRS = 600;
    /** Left and down turns before a part is left where it is; each turn moves it, so this only ends creeping. */
    private static final int TURNS = 50;
    /** Beginnings of orders that are remembered; those of a few parts are fewer. */
    private static final int REMEMBERED = 4000;

    private final boolean rough;
    private final Blocked blocked = new Blocked();
    private final List<Layout.Spot> taken;
    private final List<Layout.Spot> lying = new ArrayList<>();
    private final List<Step> begun = new ArrayList<>();
    private int remembered;
    private long work;

    /** Where a part came to lie after those before it, and the work of that; orders that begin alike lie alike so far. */
    private record Step(Part part, Layout.Spot spot, long work, List<Step> next) {}

    public BottomLeft(Strip strip, boolean rough) {
        this.rough = rough;
        this.taken = strip.taken().stream().map(BottomLeft::lying).toList();
    }

    private static Layout.Spot lying(Shape taken) {
        Part.Variant still = new Part.Variant(0, taken, taken, Beat.FREE);
        Part part = new Part(-1, List.of(still), Across.between(taken.minX, taken.maxX));
        return new Layout.Spot(part, 0, 0, 0, taken.maxY);
    }

    /** Positions tried and pairs of outlines compared so far; every order costs some, or a search could not end. */
    long work() {
        return work;
    }

    /** Lays the parts in this order; null as soon as the lay would not be shorter than the limit. */
    @Nullable
    public Layout lay(List<Part> order, long limit) {
        lying.clear();
        lying.addAll(taken);
        long length = 0;
        List<Step> known = begun;
        for (Part part : order) {
            Step step = step(part, known);
            length = Math.max(length, step.spot.top());
            if (length >= limit) {
                return null;
            }
            lying.add(step.spot);
            known = step.next;
        }
        return new Layout(laid(), length);
    }

    /** Of one kind, and held to the same turns. */
    private static boolean alike(Part one, Part other) {
        if (one.kind() != other.kind()
                || one.variants().size() != other.variants().size()) {
            return false;
        }
        for (int v = 0; v < one.variants().size(); v++) {
            if (one.variants().get(v) != other.variants().get(v)) {
                return false;
            }
        }
        return true;
    }

    private Step step(Part part, List<Step> known) {
        for (Step step : known) {
            if (step.part == part || alike(step.part, part)) {
                work += step.work;
                return step;
            }
        }
        long before = work;
        Step step = new Step(part, best(part), work - before, new ArrayList<>(2));
        if (remembered < REMEMBERED) {
            known.add(step);
            remembered++;
        }
        return step;
    }

    /** What lies there but what the strip came with. */
    private List<Layout.Spot> laid() {
        return lying.subList(taken.size(), lying.size());
    }

    /**
     * The same layout with each part in turn, the lowest first, taken up and put down as low as it goes where it is,
     * then pushed left and down, until none moves; never longer.
     */
    public Layout settled(Layout layout) {
        lying.clear();
        lying.addAll(taken);
        lying.addAll(layout.spots());
        boolean moved = true;
        for (int turn = 0; turn < TURNS && moved; turn++) {
            moved = false;
            List<Integer> order = IntStream.range(taken.size(), lying.size())
                    .boxed()
                    .sorted(Comparator.comparingLong(i -> lying.get(i).top()))
                    .toList();
            for (int i : order) {
                moved |= settle(i);
            }
        }
        return new Layout(
                laid(), laid().stream().mapToLong(Layout.Spot::top).max().orElse(0));
    }

    private boolean settle(int i) {
        Layout.Spot old = lying.remove(i);
        Shape shape = old.shape(rough);
        Layout.Spot spot = spot(old.part(), old.variant(), shape, old.x());
        spot = settled(spot, shape, old.part().across().least(shape));
        boolean better = spot.top() < old.top();
        lying.add(i, better ? spot : old);
        return better;
    }

    private Layout.Spot best(Part part) {
        Layout.Spot best = null;
        for (int v = 0; v < part.variants().size(); v++) {
            Shape shape = part.variants().get(v).shape(rough);
            if (part.across().holds(shape)) {
                Layout.Spot spot = best(part, v, shape);
                best = best == null || spot.betterThan(best) ? spot : best;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("a part is wider than the cloth in every variant");
        }
        return best;
    }

    private Layout.Spot best(Part part, int variant, Shape shape) {
        long from = part.across().least(shape);
        long to = part.across().greatest(shape);
        if (from == to) {
            return spot(part, variant, shape, from);
        }
        Layout.Spot best = spot(part, variant, shape, from);
        for (long x : candidates(shape, from, to)) {
            Layout.Spot next = spot(part, variant, shape, x);
            best = next.betterThan(best) ? next : best;
        }
        return settled(refined(best, shape, from, to), shape, from);
    }

    private Layout.Spot spot(Part part, int variant, Shape shape, long x) {
        blocked.clear();
        work++;
        for (Layout.Spot other : lying) {
            Shape o = other.shape(rough);
            if (x + shape.minX < other.x() + o.maxX && other.x() + o.minX < x + shape.maxX) {
                blocked.addPair(o.columns, shape.columns, x - other.x(), other.y());
                work++;
            }
        }
        long y = blocked.firstFree(-shape.minY, part.variants().get(variant).beat());
        return new Layout.Spot(part, variant, x, y, y + shape.maxY);
    }

    private long[] candidates(Shape shape, long from, long to) {
        int corners = lying.stream().mapToInt(s -> s.shape(rough).corners()).sum();
        boolean all = (long) corners * shape.corners() <= PAIRS;
        long[] own = all ? shape.x : new long[] {shape.minX, shape.maxX};
        LongStream.Builder out = LongStream.builder();
        for (Layout.Spot other : lying) {
            Shape o = other.shape(rough);
            long[] theirs = all || corners * 2 <= PAIRS ? o.x : new long[] {o.minX, o.maxX};
            for (long there : theirs) {
                for (long here : own) {
                    out.add(other.x() + there - here);
                }
            }
        }
        for (int i = 1; i <= STEPS; i++) {
            out.add(from + (to - from) * i / STEPS);
        }
        return out.build().filter(x -> x >= from && x <= to).sorted().distinct().toArray();
    }

    private Layout.Spot refined(Layout.Spot start, Shape shape, long from, long to) {
        Layout.Spot best = start;
        for (long step = Math.max(1, (to - from) / STEPS); step > 0; ) {
            Layout.Spot before = best;
            for (long x : new long[] {before.x() - step, before.x() + step}) {
                if (x >= from && x <= to) {
                    Layout.Spot next = spot(before.part(), before.variant(), shape, x);
                    best = next.betterThan(best) ? next : best;
                }
            }
            step = best == before ? step / 2 : step;
        }
        return best;
    }

    private Layout.Spot settled(Layout.Spot start, Shape shape, long from) {
        Layout.Spot spot = start;
        for (int turn = 0; turn < TURNS; turn++) {
            long x = leftmost(spot, shape, from);
            if (x == spot.x()) {
                return spot;
            }
            spot = spot(spot.part(), spot.variant(), shape, x);
        }
        return spot;
    }

    /** The least x at which the part is free at its present height. */
    private long leftmost(Layout.Spot spot, Shape shape, long from) {
        blocked.clear();
        for (Layout.Spot other : lying) {
            Shape o = other.shape(rough);
            if (spot.y() + shape.minY < other.y() + o.maxY && other.y() + o.minY < spot.top()) {
                blocked.addPair(o.rows, shape.rows, spot.y() - other.y(), other.x());
                work++;
            }
        }
        return blocked.firstFree(from, Beat.FREE);
    }

    /** The corners of a shape moved, for checks: {x, y}. */
    static long[][] corners(Layout.Spot spot) {
        Shape s = spot.shape();
        return new long[][] {
            Arrays.stream(s.x).map(x -> x + spot.x()).toArray(),
            Arrays.stream(s.y).map(y -> y + spot.y()).toArray()
        };
    }
}
