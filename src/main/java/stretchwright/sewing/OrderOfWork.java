package stretchwright.sewing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * The order of work with the least time lost between steps: exact, by dynamic programming over the set of steps done
 * and the state of the table (Held and Karp 1962, with precedence: only sets that hold with each step all it waits for).
 *
 * <p>In: jobs in the customary order. Out: an order in which each job stands after all it needs. Promise: no valid
 * order loses less time; among equals the one that comes first when read by customary numbers. The minutes of the
 * steps themselves are the same in every order, so the least loss is the least total.
 */
final class OrderOfWork {
    /** A set is kept in the bits of a whole number. */
    static final int MOST_JOBS = 30;

    /** So many sets of steps take some 50 MB; a pair with every option has some 40,000. */
    static final int MOST_SETS = 1 << 21;

    private static final int NEVER = Integer.MAX_VALUE / 2;
    private static final int ANY_END = -1;

    private final List<Job> jobs;
    private final List<Bench> benches = new ArrayList<>(List.of(Bench.BEGIN));
    private final int[][] next;
    private final int[][] lost;

    /** For each count of steps done the sets that can be, rising. */
    private final List<int[]> sets = new ArrayList<>();

    /** For each of these sets and each bench the least loss from there on. */
    private final List<int[]> least = new ArrayList<>();

    /** @param after one bit per job that must be done before */
    record Job(int after, Optional<Tool> tool) {}

    /** @param order numbers of the jobs, first to last */
    record Order(List<Integer> order, int lostTenths, int changeovers) {
        Order {
            order = List.copyOf(order);
        }
    }

    private OrderOfWork(List<Job> jobs, ToIntFunction<Bench.Change> cost) {
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
                lost[b][j] = cost.applyAsInt(change);
            }
        }
        findSets();
    }

    private void findSets() {
        int total = 1;
        sets.add(new int[] {0});
        for (int count = 1; count <= jobs.size(); count++) {
            int[] smaller = sets.get(count - 1);
            int[] found = IntStream.range(0, jobs.size())
                    .flatMap(j -> Arrays.stream(smaller)
                            .filter(done -> ready(done, j))
                            .map(done -> done | 1 << j))
                    .sorted()
                    .distinct()
                    .toArray();
            total += found.length;
            if (total > MOST_SETS) {
                throw new IllegalArgumentException(
                        jobs.size() + " steps can be done in too many orders to try them all");
            }
            sets.add(found);
        }
        if (sets.get(jobs.size()).length == 0) {
            throw new IllegalArgumentException("the steps wait for each other in a ring");
        }
        for (int[] some : sets) {
            int[] losses = new int[some.length * benches.size()];
            Arrays.fill(losses, NEVER);
            least.add(losses);
        }
    }

    /** @param cost of a change, in tenths of a minute */
    static Order best(List<Job> jobs, ToIntFunction<Bench.Change> cost) {
        return of(jobs, cost).solve();
    }

    /** For each state in which the table can be left, the order that loses least; begun from another state. */
    static Map<Bench, Order> ends(List<Job> jobs, Bench from, ToIntFunction<Bench.Change> cost) {
        OrderOfWork work = of(jobs, cost);
        Map<Bench, Order> out = new LinkedHashMap<>();
        for (int end = 0; end < work.benches.size(); end++) {
            int start = work.benches.indexOf(from);
            work.solve(end);
            if (work.least(0, start) < NEVER) {
                out.put(work.benches.get(end), work.readOff(start));
            }
        }
        return out;
    }

    /** The fewest conversions of any valid order, whatever time it loses otherwise. */
    static int fewestConversions(List<Job> jobs) {
        OrderOfWork work = of(jobs, Bench.Change::conversions);
        work.solve();
        return work.least(0, 0);
    }

    /** How many orders keep all that must come before. */
    static BigInteger validOrders(List<Job> jobs) {
        return of(jobs, change -> 0).count();
    }

    private static OrderOfWork of(List<Job> jobs, ToIntFunction<Bench.Change> cost) {
        if (jobs.size() > MOST_JOBS) {
            throw new IllegalArgumentException(jobs.size() + " steps are more than " + MOST_JOBS);
        }
        return new OrderOfWork(List.copyOf(jobs), cost);
    }

    /** For each set the orders of what is left, from the whole backwards; of two levels only. */
    private BigInteger count() {
        BigInteger[] larger = {BigInteger.ONE};
        for (int size = jobs.size() - 1; size >= 0; size--) {
            int[] some = sets.get(size);
            int[] next = sets.get(size + 1);
            BigInteger[] counts = new BigInteger[some.length];
            for (int i = 0; i < some.length; i++) {
                BigInteger sum = BigInteger.ZERO;
                for (int j = 0; j < jobs.size(); j++) {
                    if (ready(some[i], j)) {
                        sum = sum.add(larger[Arrays.binarySearch(next, some[i] | 1 << j)]);
                    }
                }
                counts[i] = sum;
            }
            larger = counts;
        }
        return larger[0];
    }

    private Order solve() {
        solve(ANY_END);
        return readOff(0);
    }

    /** @param end number of the bench at which the work must end, or any */
    private void solve(int end) {
        int count = jobs.size();
        for (int b = 0; b < benches.size(); b++) {
            least.get(count)[b] = end == ANY_END || end == b ? 0 : NEVER;
        }
        for (int size = count - 1; size >= 0; size--) {
            int[] some = sets.get(size);
            for (int i = 0; i < some.length; i++) {
                for (int b = 0; b < benches.size(); b++) {
                    least.get(size)[i * benches.size() + b] = leastFrom(some[i], b);
                }
            }
        }
    }

    private int least(int done, int bench) {
        int size = Integer.bitCount(done);
        return least.get(size)[Arrays.binarySearch(sets.get(size), done) * benches.size() + bench];
    }

    private int leastFrom(int done, int bench) {
        int best = NEVER;
        for (int j = 0; j < jobs.size(); j++) {
            if (ready(done, j)) {
                best = Math.min(best, throughJob(done, bench, j));
            }
        }
        return best;
    }

    private int throughJob(int done, int bench, int job) {
        return Math.min(NEVER, lost[bench][job] + least(done | 1 << job, next[bench][job]));
    }

    private Order readOff(int start) {
        int all = sets.get(jobs.size())[0];
        List<Integer> order = new ArrayList<>();
        int changeovers = 0;
        int bench = start;
        for (int done = 0; done != all; done |= 1 << order.get(order.size() - 1)) {
            int job = 0;
            while (!ready(done, job) || throughJob(done, bench, job) != least(done, bench)) {
                job++;
            }
            changeovers += benches.get(bench).to(jobs.get(job).tool()).count();
            bench = next[bench][job];
            order.add(job);
        }
        return new Order(order, least(0, start), changeovers);
    }

    private boolean ready(int done, int job) {
        return (done >> job & 1) == 0 && (jobs.get(job).after() & ~done) == 0;
    }
}
