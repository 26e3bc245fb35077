package stretchwright.sewing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Voice;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** Plans of sample patterns, and what is read of their steps. */
abstract class PlannedSteps {
    static final Set<Machine> OVERLOCK_AND_COVER = EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH);

    static SewingPlan plan(Pattern pattern, Set<Machine> machines) {
        return Planning.plan(pattern, SampleFabric.heavyKnit(), machines);
    }

    static SewingPlan.Operation step(SewingPlan plan, StepName name) {
        return plan.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + name));
    }

    static boolean isTest(SewingPlan.Operation operation) {
        return operation.name() instanceof StepName.Test;
    }

    static String instruction(SewingPlan.Operation operation) {
        return Voice.plain().say(operation.instruction());
    }

    static String check(SewingPlan.Operation operation) {
        return Voice.plain().say(operation.check());
    }

    /** Every pattern with every one of the 32 sets of machines. */
    static void everywhere(BiConsumer<Pattern, SewingPlan> claim) {
        SampleSewing.every()
                .forEach((name, pattern) ->
                        SampleSewing.machineSets().forEach(machines -> claim.accept(pattern, plan(pattern, machines))));
    }

    static Pattern withSeam(Pattern pair, Seam seam) {
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.removeIf(s -> s.role() == seam.role());
        seams.add(seam);
        return new Pattern(pair.pieces(), seams, pair.levels(), pair.reductions());
    }
}
