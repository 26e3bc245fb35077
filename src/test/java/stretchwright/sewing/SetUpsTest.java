package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Machine;

/** Before which steps a machine is set up. */
class SetUpsTest {
    /** Counted another way: the first machine, and each change of the plan. */
    @Test
    void theFirstMachineAndEachChangeAreSetUps() {
        for (Set<Machine> machines : List.of(
                EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH),
                EnumSet.of(Machine.COMBINED),
                EnumSet.of(Machine.OVERLOCKER, Machine.LOCKSTITCH),
                EnumSet.of(Machine.LOCKSTITCH))) {
            SewingPlan plan = plan(machines);
            assertThat(plan.setUps()).as("%s", machines).hasSize(plan.changeovers() + 1);
            plan.setUps()
                    .forEach(step -> assertThat(plan.operations().get(step - 1).stitch())
                            .as("step %s is sewn", step)
                            .isPresent());
        }
    }

    @Test
    void byHandNothingIsSetUp() {
        assertThat(plan(EnumSet.of(Machine.HAND)).setUps()).isEmpty();
        assertThat(plan(Set.of()).setUps()).isEmpty();
    }

    private static SewingPlan plan(Set<Machine> machines) {
        return Planning.plan(SampleSewing.withCuff(), SampleFabric.heavyKnit(), SewingTerms.on(machines), List.of());
    }
}
