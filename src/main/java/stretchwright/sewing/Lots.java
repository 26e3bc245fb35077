package stretchwright.sewing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * The least time lost between steps when pairs are sewn in lots, one lot after another, and each lot does a step for all
 * its pairs before the next one.
 *
 * <p>Within a lot nothing is lost between the same step of two pairs, so a lot loses what one pair loses, begun at the
 * state in which the lot before left the table. Which state that should be is found by dynamic programming over lots.
 * Stitches are tested once, in the first lot. With all pairs in one lot no way of sewing them loses less: leaving out all
 * pairs but one from any way gives a valid order of one pair, and leaving out work never adds a changeover.
 */
final class Lots {
    private final List<OrderOfWork.Job> first;
    private final List<OrderOfWork.Job> later;
    private final ToIntFunction<Bench.Change> cost;
    private final Map<Bench, Map<Bench, OrderOfWork.Order>> known = new HashMap<>();

    /** Time lost by so many lots, in tenths of a minute, and the changeovers. */
    record Loss(int tenths, int changeovers) {
        Loss plus(OrderOfWork.Order order) {
            return new Loss(tenths + order.lostTenths(), changeovers + order.changeovers());
        }
    }

    /** @param tests one bit per job that is done for the first lot only */
    Lots(List<OrderOfWork.Job> jobs, int tests, ToIntFunction<Bench.Change> cost) {
        this.cost = cost;
        this.first = jobs;
        this.later = without(jobs, tests);
    }

    private static List<OrderOfWork.Job> without(List<OrderOfWork.Job> jobs, int left) {
        List<Integer> kept = new ArrayList<>();
        for (int j = 0; j < jobs.size(); j++) {
            if ((left >> j & 1) == 0) {
                kept.add(j);
            }
        }
        List<OrderOfWork.Job> out = new ArrayList<>();
        for (int job : kept) {
            int after = 0;
            for (int k = 0; k < kept.size(); k++) {
                after |= (jobs.get(job).after() >> kept.get(k) & 1) << k;
            }
            out.add(new OrderOfWork.Job(after, jobs.get(job).tool()));
        }
        return out;
    }

    Loss least(int lots) {
        Map<Bench, Loss> ends = new HashMap<>();
        OrderOfWork.ends(first, Bench.BEGIN, cost)
                .forEach((end, order) -> ends.put(end, new Loss(order.lostTenths(), order.changeovers())));
        Map<Bench, Loss> now = ends;
        for (int lot = 1; lot < lots; lot++) {
            Map<Bench, Loss> next = new HashMap<>();
            now.forEach((from, loss) -> known.computeIfAbsent(from, f -> OrderOfWork.ends(later, f, cost))
                    .forEach((end, order) -> next.merge(end, loss.plus(order), Lots::less)));
            now = next;
        }
        return now.values().stream().reduce(Lots::less).orElseThrow();
    }

    private static Loss less(Loss a, Loss b) {
        boolean second = b.tenths < a.tenths || b.tenths == a.tenths && b.changeovers < a.changeovers;
        return second ? b : a;
    }

    /** The tests among the steps. */
    static int tests(List<Step> steps) {
        int bits = 0;
        for (int i = 0; i < steps.size(); i++) {
            Optional<StepName> test = steps.get(i).tool().map(FinishSteps::testOf);
            bits |= test.equals(Optional.of(steps.get(i).name())) ? 1 << i : 0;
        }
        return bits;
    }
}
