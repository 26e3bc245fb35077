package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** Lots against trying everything: all orders of every lot, and all ways of sewing several pairs at once. */
class LotsTest {
    private static List<OrderOfWork.Job> jobs(long seed, int most) {
        RandomStream random = RandomStream.of(seed, "lots");
        return OrderOfWorkTest.random(random, 1 + random.below(most));
    }

    private static int walked(List<OrderOfWork.Job> jobs, List<Integer> order) {
        return OrderOfWorkTest.walk(jobs, order).lostTenths();
    }

    /** So many copies of the jobs, each waiting only within its own copy. */
    private static List<OrderOfWork.Job> copies(List<OrderOfWork.Job> jobs, int copies) {
        List<OrderOfWork.Job> out = new ArrayList<>();
        for (int c = 0; c < copies; c++) {
            int shift = c * jobs.size();
            jobs.forEach(job -> out.add(new OrderOfWork.Job(job.after() << shift, job.tool())));
        }
        return out;
    }

    /** Two and three lots, one after another: every order of each is tried with every order of the others. */
    @Test
    void loseNoMoreThanAnyOrdersOneAfterAnother() {
        for (long seed = 1; seed <= 60; seed++) {
            List<OrderOfWork.Job> jobs = jobs(seed, 4);
            List<List<Integer>> all = OrderOfWorkTest.everyOrder(jobs);
            int two = Integer.MAX_VALUE;
            int three = Integer.MAX_VALUE;
            for (List<Integer> a : all) {
                for (List<Integer> b : all) {
                    two = Math.min(two, walked(copies(jobs, 2), joined(jobs.size(), a, b)));
                    for (List<Integer> c : all.subList(0, Math.min(8, all.size()))) {
                        three = Math.min(three, walked(copies(jobs, 3), joined(jobs.size(), a, b, c)));
                    }
                }
            }
            Lots lots = new Lots(jobs, 0, OrderOfWorkTest.USUAL);
            assertThat(lots.least(2).tenths()).as("seed %d", seed).isEqualTo(two);
            assertThat(lots.least(3).tenths()).as("seed %d", seed).isLessThanOrEqualTo(three);
            assertThat(lots.least(1).tenths())
                    .isEqualTo(OrderOfWork.best(jobs, OrderOfWorkTest.USUAL).lostTenths());
        }
    }

    @SafeVarargs
    private static List<Integer> joined(int size, List<Integer>... orders) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < orders.length; i++) {
            int shift = i * size;
            orders[i].forEach(job -> out.add(job + shift));
        }
        return out;
    }

    /** All pairs in one lot: no mixing of the steps of two pairs loses less. */
    @Test
    void noWayOfSewingTwoPairsLosesLessThanOneLot() {
        for (long seed = 1; seed <= 200; seed++) {
            List<OrderOfWork.Job> jobs = jobs(seed, 5);
            int mixed = OrderOfWork.best(copies(jobs, 2), OrderOfWorkTest.USUAL).lostTenths();
            assertThat(new Lots(jobs, 0, OrderOfWorkTest.USUAL).least(1).tenths())
                    .as("seed %d", seed)
                    .isEqualTo(mixed);
        }
    }

    @Test
    void moreLotsNeverLoseLess() {
        for (long seed = 1; seed <= 60; seed++) {
            Lots lots = new Lots(jobs(seed, 6), 0, OrderOfWorkTest.USUAL);
            for (int count = 2; count <= 5; count++) {
                assertThat(lots.least(count).tenths())
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(lots.least(count - 1).tenths());
            }
        }
    }

    /** By hand: overlock then cover on one combined machine; the second lot must be converted back: 15, 45, 75 min. */
    @Test
    void everyLotOnAConvertingMachineCostsTwoConversionsMore() {
        List<OrderOfWork.Job> jobs = OrderOfWorkTest.overlockThenCoverOnOneMachine();
        Lots lots = new Lots(jobs, 0, OrderOfWorkTest.USUAL);
        assertThat(lots.least(1)).isEqualTo(new Lots.Loss(150, 1));
        assertThat(lots.least(2)).isEqualTo(new Lots.Loss(450, 3));
        assertThat(lots.least(3)).isEqualTo(new Lots.Loss(750, 5));
    }
}
