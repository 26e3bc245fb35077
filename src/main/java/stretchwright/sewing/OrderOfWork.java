package stretchwright.sewing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
        for (int[] some : sets) {
            int[] losses = new int[some.length * benches.size()];
            Arrays.fill(losses, NEVER);
            least.add(losses);
        }
    }

    static Order best(List<Job> jobs) {
        if (jobs.size() > MOST_JOBS) {
            throw new IllegalArgumentException(jobs.size() + " steps are more than " + MOST_JOBS);
        }
        return new OrderOfWork(List.copyOf(jobs)).solve();
    }

    private Order solve() {
        int count = jobs.size();
        if (sets.get(count).length == 0) {
            throw new IllegalArgumentException("the steps wait for each other in a ring");
        }
        Arrays.fill(least.get(count), 0);
        for (int size = count - 1; size >= 0; size--) {
            int[] some = sets.get(size);
            for (int i = 0; i < some.length; i++) {
                for (int b = 0; b < benches.size(); b++) {
                    least.get(size)[i * benches.size() + b] = leastFrom(some[i], b);
                }
            }
        }
        return readOff(sets.get(count)[0]);
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
        return lost[bench][job] + least(done | 1 << job, next[bench][job]);
    }

    private Order readOff(int all) {
        List<Integer> order = new ArrayList<>();
        int changeovers = 0;
        int bench = 0;
        for (int done = 0; done != all; done |= 1 << order.get(order.size() - 1)) {
            int job = 0;
            while (!ready(done, job) || throughJob(done, bench, job) != least(done, bench)) {
                job++;
            }
            changeovers += benches.get(bench).to(jobs.get(job).tool()).count();
            bench = next[bench][job];
            order.add(job);
        }
        return new Order(order, least(0, 0), changeovers);
    }

    private boolean ready(int done, int job) {
        return (done >> job & 1) == 0 && (jobs.get(job).after() & ~done) == 0;
    }
}
