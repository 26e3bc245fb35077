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
        Bench bench = Bench.BEGIN;
        for (int job : best.order()) {
            Bench.Change change = bench.to(jobs.get(job).tool());
            operations.add(operation(
                    steps.get(job), operations.size() + 1, before(jobs.get(job), best.order()), converting(change)));
            bench = change.then();
            tenths += steps.get(job).tenths();
        }
        return new SewingPlan(operations, best.changeovers(), tenths / 10.0, ThreadUse.perMachine(operations));
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
                step.tenths() / 10.0,
                after,
                first + step.instruction(),
                step.check());
    }
}
