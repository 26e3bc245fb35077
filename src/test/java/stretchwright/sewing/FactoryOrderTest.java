package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;

/**
 * Factory order for leggings (trade-values section 11, source S37), variant (b) for a leg without side seam: the band's
 * ring first, rises, cover row while flat, one inseam hem to hem, band, lower edges.
 */
class FactoryOrderTest {
    private static final List<StepName> FACTORY = List.of(
            StepKind.BAND_RING,
            StepKind.BAND_FOLD,
            StepKind.FRONT_RISE,
            StepKind.BACK_RISE,
            StepKind.ROW_OVER_RISES,
            StepKind.INSEAMS,
            StepKind.CROTCH_BAR,
            StepKind.LEG_TOP_MARKS,
            StepKind.BAND_JOIN,
            StepKind.CUFF_RINGS,
            StepKind.CUFF_FOLD,
            StepKind.LEG_END_MARKS,
            StepKind.CUFF_JOIN,
            StepKind.HEMS,
            StepKind.PRESS,
            StepKind.TRY_ON);

    @Test
    void theFactoryOrderIsValidAndNeverBeatsOurs() {
        forAll((steps, jobs) -> {
            List<Integer> factory = factory(steps);
            assertThat(OrderOfWorkTest.keeps(jobs, factory)).isTrue();
            assertThat(OrderOfWorkTest.walk(jobs, factory).lostTenths())
                    .isGreaterThanOrEqualTo(
                            OrderOfWork.best(jobs, OrderOfWorkTest.USUAL).lostTenths());
        });
    }

    /** Plain tripwire against orders drawn at random among the valid ones. */
    @Test
    void noOrderDrawnAtRandomBeatsOurs() {
        RandomStream random = RandomStream.of(7, "orders of work");
        forAll((steps, jobs) -> {
            int ours = OrderOfWork.best(jobs, OrderOfWorkTest.USUAL).lostTenths();
            for (int i = 0; i < 20; i++) {
                assertThat(OrderOfWorkTest.walk(jobs, drawn(jobs, random)).lostTenths())
                        .isGreaterThanOrEqualTo(ours);
            }
        });
    }

    /** The exact second opinion on the garment itself, on each run of eight neighbouring steps. */
    @Test
    void everyEightNeighbouringStepsAreOrderedAsByTryingAll() {
        List<Step> steps = SampleSewing.steps(SampleSewing.withCuff(), Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        List<OrderOfWork.Job> jobs = Steps.jobs(steps);
        for (int from = 0; from + 8 <= jobs.size(); from++) {
            List<OrderOfWork.Job> part = new ArrayList<>();
            for (int j = from; j < from + 8; j++) {
                part.add(new OrderOfWork.Job(
                        jobs.get(j).after() >> from & 0xFF, jobs.get(j).tool()));
            }
            assertThat(OrderOfWork.best(part, OrderOfWorkTest.USUAL)).isEqualTo(OrderOfWorkTest.byTryingAll(part));
        }
    }

    private static List<Integer> factory(List<Step> steps) {
        List<StepName> names = steps.stream().map(Step::name).toList();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i) instanceof StepName.Test) {
                order.add(i);
            }
        }
        FACTORY.stream().map(names::indexOf).filter(i -> i >= 0).forEach(order::add);
        assertThat(order).as("%s", names).hasSize(names.size());
        return order;
    }

    private static List<Integer> drawn(List<OrderOfWork.Job> jobs, RandomStream random) {
        List<Integer> order = new ArrayList<>();
        int done = 0;
        while (order.size() < jobs.size()) {
            int job = random.below(jobs.size());
            if ((done >> job & 1) == 0 && (jobs.get(job).after() & ~done) == 0) {
                order.add(job);
                done |= 1 << job;
            }
        }
        return order;
    }

    private interface Claim {
        void about(List<Step> steps, List<OrderOfWork.Job> jobs);
    }

    private static void forAll(Claim claim) {
        for (Pattern pattern : SampleSewing.patterns().values()) {
            for (Set<Machine> machines : SampleSewing.machineSets()) {
                List<Step> steps = SampleSewing.steps(pattern, machines);
                claim.about(steps, Steps.jobs(steps));
            }
        }
    }
}
