package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.SamplePattern;

/** Many pairs: what a batch saves on machines that must be converted, and that nothing is promised where nothing is saved. */
class BatchPlanTest {
    private static final Pattern PLAIN = SamplePattern.overBoot();
    private static final Fabric FABRIC = SampleFabric.heavyKnit();
    private static final Set<Machine> TWO = EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final Set<Machine> ONE = EnumSet.of(Machine.LOCKSTITCH);

    @Test
    void onePairInABatchIsNotFasterThanItsStepsAllow() {
        BatchPlan one = Planning.batch(PLAIN, FABRIC, TWO, 1, 1);
        SewingPlan plan = Planning.plan(PLAIN, FABRIC, TWO);
        assertThat(one.changeovers()).isEqualTo(plan.changeovers());
        assertThat(one.minutes()).isEqualTo(one.pairByPair()).isLessThanOrEqualTo(plan.minutes());
    }

    @Test
    void allPairsInOneLotChangeMachinesAsOftenAsOnePair() {
        SewingPlan plan = Planning.plan(PLAIN, FABRIC, TWO);
        BatchPlan twelve = Planning.batch(PLAIN, FABRIC, TWO, 12, 12);
        assertThat(twelve.lots()).isEqualTo(1);
        assertThat(twelve.changeovers()).isEqualTo(plan.changeovers());
        assertThat(twelve.minutes()).isLessThan(twelve.pairByPair());
    }

    @Test
    void fewerInWorkCostChangeovers() {
        BatchPlan all = Planning.batch(PLAIN, FABRIC, TWO, 12, 12);
        BatchPlan four = Planning.batch(PLAIN, FABRIC, TWO, 12, 4);
        assertThat(four.lot()).isLessThanOrEqualTo(4);
        assertThat(four.lots()).isGreaterThanOrEqualTo(3);
        assertThat(four.minutes()).isGreaterThanOrEqualTo(all.minutes()).isLessThanOrEqualTo(four.pairByPair());
    }

    /** On one machine that needs no conversion nothing is gained by leaving pairs half done. */
    @Test
    void whereNothingIsSavedPairsAreFinishedOneByOne() {
        BatchPlan plan = Planning.batch(PLAIN, FABRIC, ONE, 20, 20);
        assertThat(plan.lot()).isEqualTo(1);
        assertThat(plan.minutes()).isEqualTo(plan.pairByPair());
        assertThat(plan.changeovers()).isZero();
    }

    @Test
    void impossibleWishesAreRefused() {
        assertThatThrownBy(() -> Planning.batch(PLAIN, FABRIC, TWO, 0, 1)).hasMessageContaining("0 pairs");
        assertThatThrownBy(() -> Planning.batch(PLAIN, FABRIC, TWO, 61, 1)).hasMessageContaining("61 pairs");
        assertThatThrownBy(() -> Planning.batch(PLAIN, FABRIC, TWO, 2, 0)).hasMessageContaining("0 of them");
    }
}
