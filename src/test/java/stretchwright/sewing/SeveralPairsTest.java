package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.SamplePattern;

/** Many pairs: what sewing them together saves on machines that must be converted, and that nothing is promised where nothing is saved. */
class SeveralPairsTest {
    private static final Pattern PLAIN = SamplePattern.overBoot();
    private static final Fabric FABRIC = SampleFabric.heavyKnit();
    private static final Set<Machine> TWO = EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final Set<Machine> ONE = EnumSet.of(Machine.LOCKSTITCH);

    private static SewingTerms terms(Set<Machine> machines, int pairs, int inWork) {
        return new SewingTerms(
                machines,
                SewingTerms.CONVERSION,
                SewingTerms.CONE,
                SewingTerms.SPOOL,
                pairs,
                inWork,
                List.of(),
                Map.of());
    }

    private static SeveralPairs several(Set<Machine> machines, int pairs, int inWork) {
        return Planning.plan(PLAIN, FABRIC, terms(machines, pairs, inWork), List.of())
                .several()
                .orElseThrow();
    }

    @Test
    void onePairIsPlannedAlone() {
        assertThat(Planning.plan(PLAIN, FABRIC, terms(TWO, 1, 5), List.of()).several())
                .isEmpty();
    }

    @Test
    void allPairsInOneLotChangeMachinesAsOftenAsOnePair() {
        SewingPlan plan = Planning.plan(PLAIN, FABRIC, TWO);
        SeveralPairs twelve = several(TWO, 12, 12);
        assertThat(twelve.lots()).isEqualTo(1);
        assertThat(twelve.changeovers()).isEqualTo(plan.changeovers());
        assertThat(twelve.minutes()).isLessThan(twelve.pairByPair()).isLessThan(12 * plan.minutes());
    }

    @Test
    void fewerInWorkCostChangeovers() {
        SeveralPairs all = several(TWO, 12, 12);
        SeveralPairs four = several(TWO, 12, 4);
        assertThat(four.lot()).isLessThanOrEqualTo(4);
        assertThat(four.lots()).isGreaterThanOrEqualTo(3);
        assertThat(four.minutes()).isGreaterThanOrEqualTo(all.minutes()).isLessThanOrEqualTo(four.pairByPair());
    }

    /** On one machine that needs no conversion nothing is gained by leaving pairs half done. */
    @Test
    void whereNothingIsSavedPairsAreFinishedOneByOne() {
        SeveralPairs plan = several(ONE, 20, 20);
        assertThat(plan.lot()).isEqualTo(1);
        assertThat(plan.minutes()).isEqualTo(plan.pairByPair());
        assertThat(plan.changeovers()).isZero();
    }

    @Test
    void threadIsBoughtForAllPairs() {
        SewingPlan one = Planning.plan(PLAIN, FABRIC, TWO);
        SeveralPairs sixty = several(TWO, 60, 60);
        for (int i = 0; i < one.threads().size(); i++) {
            double metres = one.threads().get(i).metres();
            assertThat(sixty.threads().get(i).metres()).isCloseTo(60 * metres, within(60 * 0.05 + 0.05));
            assertThat(sixty.threads().get(i).count())
                    .isEqualTo((int) Math.ceil(sixty.threads().get(i).metres() / SewingTerms.CONE));
        }
    }

    @Test
    void impossibleWishesAreRefused() {
        assertThatThrownBy(() -> terms(TWO, 0, 1)).hasMessageContaining("0 pairs");
        assertThatThrownBy(() -> terms(TWO, 61, 1)).hasMessageContaining("61 pairs");
        assertThatThrownBy(() -> terms(TWO, 2, 0)).hasMessageContaining("in work 0");
    }
}
