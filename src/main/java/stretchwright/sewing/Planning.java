package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;

/**
 * From a pattern, its cloth and the machines at hand to the order of work.
 *
 * <p>In: a pattern whose seams all have a length and whose edges exist (BadInput otherwise); any set of machines, none
 * meaning by hand. Out: operations made from the seams of this pattern, each after all that must come before it, in the
 * order with the least total time. Promise: no valid order of these operations takes less time; the same input gives
 * the same plan; no straight lockstitch. The maths and its sources: docs/maths/sewing.md.
 */
public final class Planning {
    private Planning() {}

    public static SewingPlan plan(Pattern pattern, Fabric fabric, Set<Machine> machines) {
        Soundness.check(pattern);
        List<Step> steps = Steps.of(pattern, fabric, new Kit(machines));
        List<OrderOfWork.Job> jobs = Steps.jobs(steps);
        OrderOfWork.Order best = OrderOfWork.best(jobs);
        List<SewingPlan.Operation> operations = new ArrayList<>();
        int tenths = best.lostTenths();
        int firstPair = best.lostTenths();
        Bench bench = Bench.BEGIN;
        int conversions = 0;
        for (int job : best.order()) {
            Bench.Change change = bench.to(jobs.get(job).tool());
            operations.add(operation(
                    steps.get(job), operations.size() + 1, before(jobs.get(job), best.order()), converting(change)));
            bench = change.then();
            conversions += change.conversions();
            tenths += steps.get(job).work().tenths(Work.Band.KNOWN_DRAFT);
            firstPair += steps.get(job).work().tenths(Work.Band.FIRST_PAIR);
        }
        return new SewingPlan(
                operations,
                best.changeovers(),
                tenths / 10.0,
                firstPair / 10.0,
                ThreadUse.perMachine(operations),
                ThreadUse.perPosition(operations),
                optimum(steps, jobs, conversions));
    }

    /**
     * Several pairs like this one, sewn in lots: the lot size that takes least time, the smaller of two that take the same.
     *
     * @param pairs 1 to {@link BatchPlan#MOST_PAIRS}
     * @param inWork pairs that may be in work at a time, at least 1
     */
    public static BatchPlan batch(Pattern pattern, Fabric fabric, Set<Machine> machines, int pairs, int inWork) {
        if (pairs < 1 || pairs > BatchPlan.MOST_PAIRS || inWork < 1) {
            throw new IllegalArgumentException(pairs + " pairs, " + inWork + " of them in work");
        }
        Soundness.check(pattern);
        List<Step> steps = Steps.of(pattern, fabric, new Kit(machines));
        int tests = Lots.tests(steps);
        Lots lots = new Lots(Steps.jobs(steps), tests);
        int work = 0;
        for (int i = 0; i < steps.size(); i++) {
            work += (tests >> i & 1) == 1
                    ? steps.get(i).work().tenths(Work.Band.KNOWN_DRAFT)
                    : pairs * steps.get(i).work().tenths(Work.Band.BATCH);
        }
        int best = 1;
        for (int lot = 2; lot <= Math.min(pairs, inWork); lot++) {
            best = lots.least(count(pairs, lot)).tenths()
                            < lots.least(count(pairs, best)).tenths()
                    ? lot
                    : best;
        }
        Lots.Loss loss = lots.least(count(pairs, best));
        return new BatchPlan(
                pairs,
                best,
                count(pairs, best),
                loss.changeovers(),
                (work + loss.tenths()) / 10.0,
                (work + lots.least(pairs).tenths()) / 10.0);
    }

    private static int count(int pairs, int lot) {
        return (pairs + lot - 1) / lot;
    }

    private static SewingPlan.Optimum optimum(List<Step> steps, List<OrderOfWork.Job> jobs, int conversions) {
        List<String> chain = Alternation.longest(jobs).stream()
                .map(job -> steps.get(job).name())
                .toList();
        return new SewingPlan.Optimum(
                OrderOfWork.validOrders(jobs),
                conversions,
                OrderOfWork.fewestConversions(jobs),
                chain.size() > 1 ? chain : List.of());
    }

    private static List<Integer> before(OrderOfWork.Job job, List<Integer> order) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            if ((job.after() >> order.get(i) & 1) == 1) {
                numbers.add(i + 1);
            }
        }
        return numbers;
    }

    private static String converting(Bench.Change change) {
        if (change.conversions() == 0) {
            return "";
        }
        return "First unplug the machine and convert it to "
                + change.then().combined().orElseThrow().word() + "; its minutes are counted apart. ";
    }

    private static SewingPlan.Operation operation(Step step, int number, List<Integer> after, String first) {
        return new SewingPlan.Operation(
                number,
                step.name(),
                step.place(),
                step.tool().map(Tool::stitch),
                step.seam(),
                step.joins(),
                Grid.snap(step.length()),
                step.work().tenths(Work.Band.KNOWN_DRAFT) / 10.0,
                after,
                first + step.instruction(),
                step.check(),
                SewingPlan.Help.NONE);
    }
}
