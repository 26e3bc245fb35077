package stretchwright.sewing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order of work with the least time lost between steps: exact, by dynamic programming over the set of steps done
 * and the state of the table (Held and Karp 1962, with precedence).
 *
 * <p>In: jobs in the customary order. Out: an order in which each job stands after all it needs. Promise: no valid
 * order loses less time; among equals the one that comes first when read by customary numbers. The minutes of the
 * steps themselves are the same in every order, so the least loss is the least total.
 */
final class OrderOfWork {
    /** One bit per job in an int; only sets that an order can reach are kept, a few thousand for a pair of leggings. */
    static final int MOST_JOBS = 30;

    private static final int NEVER = Integer.MAX_VALUE / 2;

    private final List<Job> jobs;
    private final List<Bench> benches = new ArrayList<>(List.of(Bench.BEGIN));
    private final int[][] next;
    private final int[][] lost;
    private final Map<Integer, int[]> least = new HashMap<>();

    /** @param after one bit per job that must be done before */
    record Job(int after, Optional<Tool> tool) {}

    /** @param order numbers of the jobs, first to last */
    record Order(List<Integer> order, int lostTenths, int changeovers) {
        Order {
            order = List.copyOf(order);
        }
    }

    private OrderOfWork(List<Job> jobs) {
        this.jobs = jobs;
        for (int b = 0; b < benches.size(); b++) {
            for (Job job : jobs) {
                Bench then = benches.get(b).to(job.tool()).then();
                if (!benches.contains(then)) {
                    benches.add(then);
                }
            }
        }
        next = new int[benches.size()][jobs.size()];
        lost = new int[benches.size()][jobs.size()];
        for (int b = 0; b < benches.size(); b++) {
            for (int j = 0; j < jobs.size(); j++) {
                Bench.Change change = benches.get(b).to(jobs.get(j).tool());
                next[b][j] = benches.indexOf(change.then());
                lost[b][j] = change.tenths();
            }
        }
    }

    static Order best(List<Job> jobs) {
        if (jobs.size() > MOST_JOBS) {
            throw new IllegalArgumentException(jobs.size() + " steps are more than " + MOST_JOBS);
        }
        return new OrderOfWork(List.copyOf(jobs)).solve();
    }

    private Order solve() {
        int all = (1 << jobs.size()) - 1;
        int[] done = new int[benches.size()];
        least.put(all, done);
        if (least(0)[0] >= NEVER) {
            throw new IllegalArgumentException("the steps wait for each other in a ring");
        }
        return readOff(all);
    }

    /** The least loss from a set of done jobs on, per bench; as deep as there are jobs. */
    private int[] least(int done) {
        int[] known = least.get(done);
        if (known != null) {
            return known;
        }
        int[] best = new int[benches.size()];
        Arrays.fill(best, NEVER);
        for (int j = 0; j < jobs.size(); j++) {
            if (ready(done, j)) {
                int[] after = least(done | 1 << j);
                for (int b = 0; b < best.length; b++) {
                    best[b] = Math.min(best[b], lost[b][j] + after[next[b][j]]);
                }
            }
        }
        least.put(done, best);
        return best;
    }

    private int throughJob(int done, int bench, int job) {
        return lost[bench][job] + least(done | 1 << job)[next[bench][job]];
    }

    private Order readOff(int all) {
        List<Integer> order = new ArrayList<>();
        int changeovers = 0;
        int bench = 0;
        for (int done = 0; done != all; done |= 1 << order.get(order.size() - 1)) {
            int job = 0;
            while (!ready(done, job) || throughJob(done, bench, job) != least(done)[bench]) {
                job++;
            }
            changeovers += benches.get(bench).to(jobs.get(job).tool()).count();
            bench = next[bench][job];
            order.add(job);
        }
        return new Order(order, least(0)[0], changeovers);
    }

    private boolean ready(int done, int job) {
        return (done >> job & 1) == 0 && (jobs.get(job).after() & ~done) == 0;
    }
}
