package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.RandomStream;

/**
 * Tries orders of the parts with bottom-left and keeps the best layouts.
 *
 * <p>First the orders by area, height, width and box; then, where there are few parts, every distinct order; then
 * seeded changes of the best order so far, with single parts held to one of their turns. All choices count work
 * (positions tried, pairs of outlines compared), never the clock; the clock may only end the search between two orders.
 */
public final class Orders {
    /** All distinct orders of up to this many are walked through: 6 different parts, or 8 with pairs among them. */
    private static final int MANY = 1500;

    /** How often a change also holds one part to one turn. */
    private static final double HOLD = 0.5;

    private final BottomLeft bottomLeft;
    private final int keep;
    private final long budget;
    private final BooleanSupplier stop;
    private final Consumer<Layout> better;
    private final List<Found> best = new ArrayList<>();

    /** An order that was laid, and how. */
    public record Found(List<Part> order, Layout layout) {}

    /**
     * @param keep how many of the best layouts to keep
     * @param budget positions and pairs of outlines to try at most; the order under way is finished
     * @param stop asked between orders
     * @param better told each layout shorter than all before
     */
    public Orders(Strip strip, boolean rough, int keep, long budget, BooleanSupplier stop, Consumer<Layout> better) {
        this.bottomLeft = new BottomLeft(strip, rough);
        this.keep = keep;
        this.budget = budget;
        this.stop = stop;
        this.better = better;
    }

    /** The best orders found, shortest first; at least one. */
    public List<Found> search(List<Part> parts, RandomStream random) {
        List<Comparator<Part>> rules = List.of(
                Comparator.comparingDouble(p -> -p.area()),
                Comparator.comparingLong(p -> -p.height()),
                Comparator.comparingLong(p -> -p.width()),
                Comparator.comparingDouble(p -> -(double) p.width() * p.height()));
        for (Comparator<Part> rule : rules) {
            if (best.isEmpty() || goOn()) {
                attempt(parts.stream().sorted(rule).toList());
            }
        }
        if (distinct(parts) <= MANY) {
            walk(new ArrayList<>(), new ArrayList<>(best.get(0).order()));
        }
        while (parts.size() > 1 && goOn()) {
            attempt(changed(best.get(0).order(), random));
        }
        return List.copyOf(best);
    }

    long work() {
        return bottomLeft.work();
    }

    private boolean goOn() {
        return bottomLeft.work() < budget && !stop.getAsBoolean();
    }

    private void attempt(List<Part> order) {
        long limit = best.size() < keep
                ? Long.MAX_VALUE
                : best.get(best.size() - 1).layout().length();
        @Nullable Layout layout = bottomLeft.lay(order, limit);
        if (layout == null) {
            return;
        }
        boolean first = best.isEmpty() || layout.length() < best.get(0).layout().length();
        best.add(new Found(order, layout));
        best.sort(Comparator.comparingLong(f -> f.layout().length()));
        if (best.size() > keep) {
            best.remove(keep);
        }
        if (first) {
            better.accept(layout);
        }
    }

    /** All distinct orders, those near the best first one first. */
    private void walk(List<Part> done, List<Part> left) {
        if (!goOn()) {
            return;
        }
        if (left.isEmpty()) {
            attempt(done);
            return;
        }
        List<Integer> tried = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
            Part next = left.get(i);
            if (!tried.contains(next.kind())) {
                tried.add(next.kind());
                List<Part> more = new ArrayList<>(done);
                more.add(next);
                List<Part> rest = new ArrayList<>(left);
                rest.remove(i);
                walk(more, rest);
            }
        }
    }

    private static double distinct(List<Part> parts) {
        double orders = 1;
        for (int i = 0; i < parts.size(); i++) {
            int kind = parts.get(i).kind();
            long alike = parts.subList(0, i + 1).stream()
                    .filter(p -> p.kind() == kind)
                    .count();
            orders *= (i + 1.0) / alike;
        }
        return orders;
    }

    /** One part moved elsewhere in the order, or two swapped; perhaps one held to one of its turns. */
    private static List<Part> changed(List<Part> order, RandomStream random) {
        List<Part> out = new ArrayList<>(order);
        int i = random.below(out.size());
        int j = random.below(out.size());
        if (random.nextDouble() < 0.5) {
            out.add(j, out.remove(i));
        } else {
            Part swapped = out.set(i, out.get(j));
            out.set(j, swapped);
        }
        if (random.nextDouble() < HOLD) {
            int k = random.below(out.size());
            out.set(k, held(out.get(k), random).orElse(out.get(k)));
        }
        return out;
    }

    private static Optional<Part> held(Part part, RandomStream random) {
        if (part.variants().size() < 2) {
            return Optional.empty();
        }
        Part.Variant one = part.variants().get(random.below(part.variants().size()));
        return Optional.of(new Part(part.kind(), List.of(one), part.across()));
    }
}
