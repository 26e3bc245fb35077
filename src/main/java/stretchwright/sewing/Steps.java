package stretchwright.sewing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;

/** The steps of one garment in the customary order, and which must come before which. */
final class Steps {
    private Steps() {}

    static List<Step> of(Pattern pattern, Fabric fabric, SewingTerms terms, Demands demands) {
        Kit kit = new Kit(terms.machines());
        FinishSteps finish = new FinishSteps(pattern, fabric, kit);
        PartSteps parts = new PartSteps(pattern, fabric, kit);
        List<Step> sewing = new ArrayList<>(parts.pockets());
        parts.panels().ifPresent(sewing::add);
        sewing.addAll(new LegSteps(pattern, fabric, kit).all());
        parts.gusset().ifPresent(sewing::add);
        sewing.addAll(new TopSteps(pattern, fabric, kit).all());
        sewing.addAll(new RingSteps(pattern, fabric, kit).all());
        sewing.addAll(new LowerSteps(pattern, fabric, kit).all());
        sewing.addAll(finish.hems());
        List<Step> all = new ArrayList<>(finish.tests(sewing, demands));
        all.addAll(sewing);
        all.addAll(finish.last(sewing));
        return Extras.into(all, terms.extras());
    }

    /** The steps as jobs: names become numbers, and each sewn step waits for the test of its stitch. */
    static List<OrderOfWork.Job> jobs(List<Step> steps) {
        Map<StepName, Integer> numbers = new HashMap<>();
        for (int i = 0; i < steps.size(); i++) {
            numbers.put(steps.get(i).name(), i);
        }
        return steps.stream()
                .map(step -> new OrderOfWork.Job(bits(before(step), numbers), step.tool()))
                .toList();
    }

    private static Set<StepName> before(Step step) {
        Set<StepName> names = new LinkedHashSet<>(step.after());
        step.tool()
                .map(FinishSteps::testOf)
                .filter(test -> !test.equals(step.name()))
                .ifPresent(names::add);
        return names;
    }

    private static int bits(Set<StepName> names, Map<StepName, Integer> numbers) {
        int bits = 0;
        for (StepName name : names) {
            Integer number = numbers.get(name);
            bits |= number == null ? 0 : 1 << number;
        }
        return bits;
    }
}
