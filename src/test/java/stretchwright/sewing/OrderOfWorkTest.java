package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

class OrderOfWorkTest {
    /** By the minutes that are usual. */
    static final ToIntFunction<Bench.Change> USUAL = SewingTerms.on(Set.of())::tenths;

    private static final Tool OVERLOCK = new Tool(Machine.OVERLOCKER, Stitch.OVERLOCK_4);
    private static final Tool COVER = new Tool(Machine.COVERSTITCH, Stitch.COVERSTITCH);
    private static final Tool COMBINED_OVERLOCK = new Tool(Machine.COMBINED, Stitch.OVERLOCK_4);
    private static final Tool COMBINED_COVER = new Tool(Machine.COMBINED, Stitch.COVERSTITCH);
    private static final Tool ZIGZAG = new Tool(Machine.LOCKSTITCH, Stitch.ZIGZAG);
    private static final Tool HAND = new Tool(Machine.HAND, Stitch.BACKSTITCH_BY_HAND);
    private static final List<Optional<Tool>> TOOLS = List.of(
            Optional.empty(),
            Optional.of(HAND),
            Optional.of(OVERLOCK),
            Optional.of(COVER),
            Optional.of(ZIGZAG),
            Optional.of(COMBINED_OVERLOCK),
            Optional.of(COMBINED_COVER));

    /** The second opinion: walk through every valid order, by hand of the definition, and keep the first of the best. */
    static OrderOfWork.Order byTryingAll(List<OrderOfWork.Job> jobs) {
        List<OrderOfWork.Order> best = new ArrayList<>();
        tryAll(jobs, new ArrayList<>(), best);
        return best.get(0);
    }

    private static void tryAll(List<OrderOfWork.Job> jobs, List<Integer> begun, List<OrderOfWork.Order> best) {
        if (begun.size() == jobs.size()) {
            OrderOfWork.Order order = walk(jobs, begun);
            if (best.isEmpty() || order.lostTenths() < best.get(0).lostTenths()) {
                best.clear();
                best.add(order);
            }
            return;
        }
        for (int j = 0; j < jobs.size(); j++) {
            int after = jobs.get(j).after();
            boolean ready = !begun.contains(j)
                    && java.util.stream.IntStream.range(0, jobs.size())
                            .allMatch(k -> (after >> k & 1) == 0 || begun.contains(k));
            if (ready) {
                begun.add(j);
                tryAll(jobs, begun, best);
                begun.remove(begun.size() - 1);
            }
        }
    }

    static OrderOfWork.Order walk(List<OrderOfWork.Job> jobs, List<Integer> order) {
        Bench bench = Bench.BEGIN;
        int tenths = 0;
        int changeovers = 0;
        for (int job : order) {
            Bench.Change change = bench.to(jobs.get(job).tool());
            tenths += USUAL.applyAsInt(change);
            changeovers += change.count();
            bench = change.then();
        }
        return new OrderOfWork.Order(order, tenths, changeovers);
    }

    static boolean keeps(List<OrderOfWork.Job> jobs, List<Integer> order) {
        int done = 0;
        for (int job : order) {
            if ((jobs.get(job).after() & ~done) != 0) {
                return false;
            }
            done |= 1 << job;
        }
        return done == (1 << jobs.size()) - 1;
    }

    private static OrderOfWork.Job job(Tool tool, int... after) {
        int bits = 0;
        for (int number : after) {
            bits |= 1 << number;
        }
        return new OrderOfWork.Job(bits, Optional.of(tool));
    }

    /** Jobs wait only for jobs before them in a shuffled numbering, so that no ring can arise. */
    static List<OrderOfWork.Job> random(RandomStream random, int count) {
        List<Integer> ranks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ranks.add(i);
        }
        for (int i = count - 1; i > 0; i--) {
            Collections.swap(ranks, i, random.below(i + 1));
        }
        double density = random.nextDouble() * 0.6;
        List<OrderOfWork.Job> jobs = new ArrayList<>();
        for (int j = 0; j < count; j++) {
            int after = 0;
            for (int k = 0; k < count; k++) {
                if (ranks.get(k) < ranks.get(j) && random.nextDouble() < density) {
                    after |= 1 << k;
                }
            }
            jobs.add(new OrderOfWork.Job(after, TOOLS.get(random.below(TOOLS.size()))));
        }
        return jobs;
    }

    @Test
    void equalsTryingEveryOrderOnRandomJobs() {
        for (long seed = 1; seed <= 300; seed++) {
            RandomStream random = RandomStream.of(seed, "order of work");
            List<OrderOfWork.Job> jobs = random(random, 1 + random.below(7));
            assertThat(OrderOfWork.best(jobs, USUAL))
                    .as("seed %d, %s", seed, jobs)
                    .isEqualTo(byTryingAll(jobs));
        }
    }

    /** Counted by walking through them all; and the fewest conversions, and a chain that forces no more than these. */
    @Test
    void countsTheOrdersAndTheConversionsNoOrderCanSpare() {
        for (long seed = 1; seed <= 300; seed++) {
            RandomStream random = RandomStream.of(seed, "orders counted");
            List<OrderOfWork.Job> jobs = random(random, 1 + random.below(6));
            List<List<Integer>> all = everyOrder(jobs);
            int fewest = all.stream()
                    .mapToInt(order -> conversions(jobs, order))
                    .min()
                    .orElseThrow();
            assertThat(OrderOfWork.validOrders(jobs)).as("seed %d", seed).isEqualTo(BigInteger.valueOf(all.size()));
            assertThat(OrderOfWork.fewestConversions(jobs)).as("seed %d", seed).isEqualTo(fewest);
            List<Integer> chain = Alternation.longest(jobs);
            assertThat(Math.max(0, chain.size() - 1)).as("seed %d", seed).isLessThanOrEqualTo(fewest);
            for (int i = 1; i < chain.size(); i++) {
                int first = chain.get(i - 1);
                int second = chain.get(i);
                assertThat(all).allMatch(o -> o.indexOf(first) < o.indexOf(second));
                assertThat(jobs.get(first).tool()).isNotEqualTo(jobs.get(second).tool());
            }
        }
    }

    static List<List<Integer>> everyOrder(List<OrderOfWork.Job> jobs) {
        List<List<Integer>> all = new ArrayList<>();
        everyOrder(jobs, new ArrayList<>(), all);
        return all;
    }

    static List<OrderOfWork.Job> overlockThenCoverOnOneMachine() {
        return List.of(job(COMBINED_OVERLOCK), job(COMBINED_COVER, 0));
    }

    private static void everyOrder(List<OrderOfWork.Job> jobs, List<Integer> begun, List<List<Integer>> all) {
        if (begun.size() == jobs.size()) {
            all.add(List.copyOf(begun));
            return;
        }
        for (int j = 0; j < jobs.size(); j++) {
            int done = begun.stream().mapToInt(k -> 1 << k).sum();
            if (!begun.contains(j) && (jobs.get(j).after() & ~done) == 0) {
                begun.add(j);
                everyOrder(jobs, begun, all);
                begun.remove(begun.size() - 1);
            }
        }
    }

    private static int conversions(List<OrderOfWork.Job> jobs, List<Integer> order) {
        Bench bench = Bench.BEGIN;
        int sum = 0;
        for (int job : order) {
            Bench.Change change = bench.to(jobs.get(job).tool());
            sum += change.conversions();
            bench = change.then();
        }
        return sum;
    }

    /** By hand: five free steps have 5! orders; three pairs each in turn 6! / 2^3. */
    @Tag("slow")
    @Test
    void ordersOfFreeAndPairedSteps() {
        assertThat(OrderOfWork.validOrders(Collections.nCopies(5, job(HAND)))).isEqualTo(BigInteger.valueOf(120));
        List<OrderOfWork.Job> pairs =
                List.of(job(HAND), job(HAND, 0), job(HAND), job(HAND, 2), job(HAND), job(HAND, 4));
        assertThat(OrderOfWork.validOrders(pairs)).isEqualTo(BigInteger.valueOf(90));
        assertThat(OrderOfWork.validOrders(Collections.nCopies(20, job(HAND))))
                .isEqualTo(new BigInteger("2432902008176640000"));
    }

    /** By hand: overlock, cover, overlock in a chain: two conversions, and that chain is why. */
    @Test
    void aChainOfThreeForcesTwoConversions() {
        List<OrderOfWork.Job> jobs =
                List.of(job(COMBINED_OVERLOCK), job(COMBINED_COVER, 0), job(HAND, 1), job(COMBINED_OVERLOCK, 2));
        assertThat(OrderOfWork.fewestConversions(jobs)).isEqualTo(2);
        assertThat(Alternation.longest(jobs)).containsExactly(0, 1, 3);
    }

    @Test
    void keepsWhatMustComeBeforeAndCountsWhatItWalks() {
        for (long seed = 1; seed <= 40; seed++) {
            RandomStream random = RandomStream.of(seed, "long order of work");
            List<OrderOfWork.Job> jobs = random(random, 8 + random.below(6));
            OrderOfWork.Order best = OrderOfWork.best(jobs, USUAL);
            assertThat(keeps(jobs, best.order())).as("seed %d", seed).isTrue();
            assertThat(best).as("seed %d", seed).isEqualTo(walk(jobs, best.order()));
        }
    }

    /** By hand: overlock, cover, overlock, cover, where only the last two wait: one move is enough. */
    @Test
    void gathersTheWorkOfOneMachine() {
        List<OrderOfWork.Job> jobs = List.of(job(OVERLOCK), job(COVER), job(OVERLOCK, 0), job(COVER, 1));
        assertThat(OrderOfWork.best(jobs, USUAL)).isEqualTo(new OrderOfWork.Order(List.of(0, 2, 1, 3), 5, 1));
    }

    /** By hand: over, cover, over in a chain on one combined machine is converted twice: 2 x 15 min. */
    @Test
    void theCombinedMachineIsConvertedAsOftenAsAChainForces() {
        List<OrderOfWork.Job> jobs = List.of(job(COMBINED_OVERLOCK), job(COMBINED_COVER, 0), job(COMBINED_OVERLOCK, 1));
        assertThat(OrderOfWork.best(jobs, USUAL)).isEqualTo(new OrderOfWork.Order(List.of(0, 1, 2), 300, 2));
    }

    /** By hand: a move away and back (1.0 min) is cheaper than a conversion (15 min). */
    @Test
    void ratherMovesThanConverts() {
        List<OrderOfWork.Job> jobs =
                List.of(job(COMBINED_OVERLOCK), job(ZIGZAG, 0), job(COMBINED_OVERLOCK, 1), job(COMBINED_COVER));
        OrderOfWork.Order best = OrderOfWork.best(jobs, USUAL);
        assertThat(best.lostTenths()).isEqualTo(5 + 5 + 150);
        assertThat(best.changeovers()).isEqualTo(3);
    }

    /** Thirty steps in three chains of ten: 11 x 11 x 11 sets, and overlock and cover in turn cost a move each at least. */
    @Test
    void thirtyStepsInChainsAreOrderedExactly() {
        List<OrderOfWork.Job> jobs = new ArrayList<>();
        for (int chain = 0; chain < 3; chain++) {
            for (int i = 0; i < 10; i++) {
                Tool tool = i % 2 == 0 ? OVERLOCK : COVER;
                jobs.add(i == 0 ? job(tool) : job(tool, jobs.size() - 1));
            }
        }
        OrderOfWork.Order best = OrderOfWork.best(jobs, USUAL);
        assertThat(keeps(jobs, best.order())).isTrue();
        assertThat(best.changeovers()).isEqualTo(9);
    }

    @Test
    void equalOrdersFollowTheCustom() {
        List<OrderOfWork.Job> jobs = List.of(job(OVERLOCK), job(HAND), job(OVERLOCK), job(HAND), job(OVERLOCK));
        assertThat(OrderOfWork.best(jobs, USUAL)).isEqualTo(new OrderOfWork.Order(List.of(0, 1, 2, 3, 4), 0, 0));
    }

    @Tag("slow")
    @Test
    void refusesARingAndTooMany() {
        assertThatThrownBy(() -> OrderOfWork.best(List.of(job(HAND, 1), job(HAND, 0)), USUAL))
                .hasMessageContaining("ring");
        assertThatThrownBy(() -> OrderOfWork.best(Collections.nCopies(31, job(HAND)), USUAL))
                .hasMessageContaining("31");
        assertThatThrownBy(() -> OrderOfWork.best(Collections.nCopies(22, job(HAND)), USUAL))
                .hasMessageContaining("too many orders");
        assertThat(OrderOfWork.best(List.of(), USUAL).order()).isEmpty();
        assertThat(OrderOfWork.best(Collections.nCopies(20, job(HAND)), USUAL).order())
                .hasSize(20);
    }
}
