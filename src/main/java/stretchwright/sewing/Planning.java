package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
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
    private final List<Step> steps;
    private final List<OrderOfWork.Job> jobs;
    private final SewingTerms terms;
    private final Helping helping;

    private Planning(List<Step> steps, SewingTerms terms, Helping helping) {
        this.steps = steps;
        this.jobs = Steps.jobs(steps);
        this.terms = terms;
        this.helping = helping;
    }

    /** One pair, nothing known of what the worst pose asks. */
    public static SewingPlan plan(Pattern pattern, Fabric fabric, Set<Machine> machines) {
        return plan(pattern, fabric, SewingTerms.on(machines), List.of());
    }

    /**
     * @param strains what the fit check found of each seam in the worst pose
     * @throws stretchwright.ground.BadInput where the pattern cannot be sewn, or the sewer's own steps cannot be kept
     */
    public static SewingPlan plan(Pattern pattern, Fabric fabric, SewingTerms terms, List<SeamStrain> strains) {
        Soundness.check(pattern);
        Demands demands = new Demands(pattern, strains);
        List<Step> steps = Steps.of(pattern, fabric, terms, demands);
        Findings findings = new Findings("");
        Extras.check(steps, terms.extras(), findings);
        findings.throwIfAny();
        return new Planning(steps, terms, new Helping(pattern, fabric, terms, demands)).plan();
    }

    private SewingPlan plan() {
        OrderOfWork.Order best = OrderOfWork.best(jobs, terms::tenths);
        List<SewingPlan.Operation> operations = new ArrayList<>();
        Bench bench = Bench.BEGIN;
        int conversions = 0;
        for (int job : best.order()) {
            Bench.Change change = bench.to(jobs.get(job).tool());
            operations.add(operation(job, best.order(), converting(change)));
            bench = change.then();
            conversions += change.conversions();
        }
        return new SewingPlan(
                operations,
                best.changeovers(),
                (best.lostTenths() + work(Work.Band.KNOWN_DRAFT)) / 10.0,
                (best.lostTenths() + work(Work.Band.FIRST_PAIR)) / 10.0,
                ThreadUse.perMachine(operations),
                ThreadUse.perPosition(operations, terms, 1),
                optimum(conversions),
                terms.pairs() == 1 ? Optional.empty() : Optional.of(several(operations)));
    }

    private int work(Work.Band band) {
        return steps.stream().mapToInt(s -> s.work().tenths(band)).sum();
    }

    /** The lot size that takes least time, the smaller of two that take the same. */
    private SeveralPairs several(List<SewingPlan.Operation> operations) {
        int tests = Lots.tests(steps);
        int pairs = terms.pairs();
        Lots lots = new Lots(jobs, tests, terms::tenths);
        int work = 0;
        for (int i = 0; i < steps.size(); i++) {
            work += (tests >> i & 1) == 1
                    ? steps.get(i).work().tenths(Work.Band.KNOWN_DRAFT)
                    : pairs * steps.get(i).work().tenths(Work.Band.SEVERAL_PAIRS);
        }
        int best = 1;
        for (int lot = 2; lot <= Math.min(pairs, terms.inWork()); lot++) {
            best = lots.least(count(pairs, lot)).tenths()
                            < lots.least(count(pairs, best)).tenths()
                    ? lot
                    : best;
        }
        Lots.Loss loss = lots.least(count(pairs, best));
        return new SeveralPairs(
                pairs,
                best,
                count(pairs, best),
                loss.changeovers(),
                (work + loss.tenths()) / 10.0,
                (work + lots.least(pairs).tenths()) / 10.0,
                ThreadUse.perPosition(operations, terms, pairs));
    }

    private static int count(int pairs, int lot) {
        return (pairs + lot - 1) / lot;
    }

    private SewingPlan.Optimum optimum(int conversions) {
        List<StepName> chain = Alternation.longest(jobs).stream()
                .map(job -> steps.get(job).name())
                .toList();
        return new SewingPlan.Optimum(
                OrderOfWork.validOrders(jobs),
                conversions,
                OrderOfWork.fewestConversions(jobs),
                chain.size() > 1 ? chain : List.of());
    }

    private List<SewingPlan.Reason> before(int job, List<Integer> order) {
        List<SewingPlan.Reason> reasons = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            int other = order.get(i);
            if ((jobs.get(job).after() >> other & 1) == 1) {
                Said why = Reasons.why(steps.get(job).name(), steps.get(other).name());
                reasons.add(new SewingPlan.Reason(i + 1, why));
            }
        }
        return reasons;
    }

    private Said converting(Bench.Change change) {
        if (change.conversions() == 0) {
            return Said.NOTHING;
        }
        Part minutes = new Part.Minutes(terms.conversion(), 0);
        return change.then().combined().orElseThrow() == Bench.Setup.COVER
                ? Tell.said("convert.cover", minutes)
                : Tell.said("convert.overlock", minutes);
    }

    private SewingPlan.Operation operation(int job, List<Integer> order, Said first) {
        Step step = steps.get(job);
        List<SewingPlan.Reason> before = before(job, order);
        return new SewingPlan.Operation(
                order.indexOf(job) + 1,
                step.name(),
                step.place(),
                step.tool().map(Tool::stitch),
                step.seam(),
                step.joins(),
                Grid.snap(step.length()),
                step.work().tenths(Work.Band.KNOWN_DRAFT) / 10.0,
                before.stream().map(SewingPlan.Reason::step).toList(),
                first.and(step.instruction()),
                step.check(),
                helping.of(
                        step,
                        before.stream().filter(r -> !r.because().isNothing()).toList()));
    }
}
