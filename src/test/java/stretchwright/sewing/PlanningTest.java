package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;

/** Which steps there are, in which order and on which machine. */
class PlanningTest extends PlannedSteps {
    @Test
    void everyStepStandsAfterAllThatMustComeBefore() {
        everywhere((pattern, plan) -> {
            int step = 0;
            for (SewingPlan.Operation operation : plan.operations()) {
                assertThat(operation.step()).isEqualTo(++step);
                assertThat(operation.after()).allMatch(before -> before >= 1 && before < operation.step());
            }
        });
    }

    @Test
    void theLastStepWaitsForAllOthersInTheEnd() {
        everywhere((pattern, plan) -> {
            Set<Integer> needed =
                    new java.util.TreeSet<>(Set.of(plan.operations().size()));
            for (int i = plan.operations().size(); i >= 1; i--) {
                assertThat(needed).contains(i);
                needed.addAll(plan.operations().get(i - 1).after());
            }
        });
    }

    @Test
    void everySeamIsSewnAndItsLengthCountedOnce() {
        everywhere((pattern, plan) -> {
            double seams = pattern.seams().stream()
                    .mapToDouble(s -> s.length() * s.times())
                    .sum();
            double sewn = plan.operations().stream()
                    .filter(o -> !isTest(o)
                            && !o.name().equals(StepKind.ROW_OVER_RISES)
                            && !o.name().equals(StepKind.CROTCH_BAR)
                            && !o.name().equals(StepKind.BAND_ROW)
                            && !o.name().equals(StepKind.ELASTIC))
                    .mapToDouble(SewingPlan.Operation::length)
                    .sum();
            assertThat(sewn).isCloseTo(seams, within(0.05));
        });
    }

    @Test
    void noStraightLockstitchAndOnlyStitchesThatTheSewerHas() {
        for (Pattern pattern : SampleSewing.patterns().values()) {
            for (Set<Machine> machines : SampleSewing.machineSets()) {
                for (SewingPlan.Operation operation : plan(pattern, machines).operations()) {
                    operation.stitch().ifPresent(stitch -> {
                        assertThat(stitch).isNotEqualTo(Stitch.LOCKSTITCH);
                        Machine machine = Machine.of(operation.place().word()).orElseThrow();
                        assertThat(machine.stitches()).contains(stitch);
                        assertThat(machine == Machine.HAND || machines.contains(machine))
                                .isTrue();
                    });
                    assertThat(operation.stitch().isEmpty())
                            .isEqualTo(operation.seam().isEmpty());
                }
            }
        }
    }

    @Test
    void handIsOnlyPlannedWhereNoMachineCanSewAStretchSeam() {
        for (Set<Machine> machines : SampleSewing.machineSets()) {
            boolean byHand = plan(SampleSewing.withCuff(), machines).operations().stream()
                    .anyMatch(o -> o.stitch().equals(java.util.Optional.of(Stitch.BACKSTITCH_BY_HAND)));
            assertThat(byHand)
                    .as("%s", machines)
                    .isEqualTo(machines.isEmpty() || machines.equals(Set.of(Machine.HAND)));
        }
    }

    @Test
    void nothingOwnedIsTheSameAsByHand() {
        assertThat(plan(SampleSewing.withCuff(), Set.of()))
                .isEqualTo(plan(SampleSewing.withCuff(), Set.of(Machine.HAND)));
    }

    @Test
    void theOrderOfTheSetDoesNotMatter() {
        Set<Machine> one = new java.util.LinkedHashSet<>(List.of(Machine.COVERSTITCH, Machine.OVERLOCKER));
        assertThat(plan(SampleSewing.withCuff(), one)).isEqualTo(plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER));
    }

    @Test
    void theRisesAreCoveredWhileTheyAreFlat() {
        SewingPlan plan = plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER);
        int row = step(plan, StepKind.ROW_OVER_RISES).step();
        assertThat(step(plan, StepKind.FRONT_RISE).step()).isLessThan(row);
        assertThat(step(plan, StepKind.BACK_RISE).step()).isLessThan(row);
        assertThat(step(plan, StepKind.INSEAMS).after()).contains(row);
    }

    /** Story S1: on one combined machine all overlock first, then all cover, one conversion; none where none is needed. */
    @Test
    void theCombinedMachineIsConvertedOnceForAPlainHemAndNeverForACuff() {
        SewingPlan plain = plan(SampleSewing.plainHem(), Set.of(Machine.COMBINED));
        assertThat(plain.changeovers()).isEqualTo(1);
        assertThat(plain.operations().stream().flatMap(o -> o.stitch().stream()).distinct())
                .containsExactly(Stitch.OVERLOCK_4, Stitch.COVERSTITCH);
        assertThat(plain.operations())
                .filteredOn(o -> instruction(o).contains("convert it to coverstitch"))
                .singleElement()
                .satisfies(o -> assertThat(o.name()).isEqualTo(new StepName.Test(Stitch.COVERSTITCH)));
        SewingPlan cuff = plan(SampleSewing.withCuff(), Set.of(Machine.COMBINED));
        assertThat(cuff.changeovers()).isZero();
        assertThat(instruction(step(cuff, StepKind.BACK_RISE)))
                .contains("left out")
                .contains("converting");
    }

    /** By hand: beside an overlocker the combined machine stays a coverstitch: three moves, as with two single machines. */
    @Test
    void anOverlockerBesideTheCombinedMachineSparesTheConversions() {
        SewingPlan plan = plan(SampleSewing.plainHem(), EnumSet.of(Machine.OVERLOCKER, Machine.COMBINED));
        assertThat(step(plan, StepKind.ROW_OVER_RISES).place()).isEqualTo(Place.COMBINED);
        assertThat(plan.changeovers()).isEqualTo(3);
        assertThat(plan.minutes())
                .isEqualTo(plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER).minutes());
    }

    @Test
    void aPairWithoutWaistbandIsPlannedAndSaysSo() {
        SewingPlan plan = plan(SampleSewing.withoutWaistband(), OVERLOCK_AND_COVER);
        assertThat(plan.operations())
                .noneMatch(o -> o.name().word().contains("waistband") || o.name() == StepKind.LEG_TOP_MARKS);
        assertThat(instruction(step(plan, StepKind.TRY_ON))).contains("no waistband");
    }

    /** The join meets clip to clip: the clips of a band of two layers are set when it is turned. */
    @Test
    void aBandOfTwoLayersIsTurnedAndMarkedBeforeItIsJoined() {
        Pattern contoured = SampleSewing.every().get("darts under a contoured band");
        SewingPlan plan = plan(java.util.Objects.requireNonNull(contoured), OVERLOCK_AND_COVER);
        assertThat(step(plan, StepKind.BAND_JOIN).after())
                .contains(step(plan, StepKind.BAND_TURN).step());
    }

    @Test
    void aSideSeamIsSewnBeforeTheRises() {
        Seam side = new Seam(
                Seam.Role.SIDE_SEAM,
                SeamName.of(SeamKind.SIDE_SEAM),
                List.of(
                        new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.FRONT_INSEAM, 900),
                        new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.BACK_INSEAM, 903)),
                3,
                7,
                2);
        SewingPlan plan = plan(withSeam(SampleSewing.withCuff(), side), OVERLOCK_AND_COVER);
        assertThat(step(plan, StepKind.FRONT_RISE).after())
                .contains(step(plan, StepKind.SIDE_SEAMS).step());
        assertThat(step(plan, StepKind.SIDE_SEAMS).length()).isEqualTo(1806);
        assertThat(check(step(plan, StepKind.SIDE_SEAMS))).contains("900 mm and 903 mm");
    }
}
