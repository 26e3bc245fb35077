package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.BadInput;
import stretchwright.ground.Voice;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;

class PlanningTest {
    private static final Set<Machine> OVERLOCK_AND_COVER = EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH);

    private static SewingPlan plan(Pattern pattern, Set<Machine> machines) {
        return Planning.plan(pattern, SampleFabric.heavyKnit(), machines);
    }

    private static SewingPlan.Operation step(SewingPlan plan, StepName name) {
        return plan.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + name));
    }

    private static boolean isTest(SewingPlan.Operation operation) {
        return operation.name() instanceof StepName.Test;
    }

    private static String instruction(SewingPlan.Operation operation) {
        return Voice.plain().say(operation.instruction());
    }

    private static String check(SewingPlan.Operation operation) {
        return Voice.plain().say(operation.check());
    }

    /** Every pattern with every one of the 32 sets of machines. */
    private static void everywhere(BiConsumer<Pattern, SewingPlan> claim) {
        SampleSewing.every()
                .forEach((name, pattern) ->
                        SampleSewing.machineSets().forEach(machines -> claim.accept(pattern, plan(pattern, machines))));
    }

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
    void theTotalIsTheSumOfTheStepsAndTheChangeovers() {
        SewingPlan plan = plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER);
        double steps = plan.operations().stream()
                .mapToDouble(SewingPlan.Operation::minutes)
                .sum();
        assertThat(plan.changeovers()).isEqualTo(3);
        assertThat(plan.minutes()).isCloseTo(steps + 3 * 0.5, within(1e-9));
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
    void aSubstituteStitchSaysItsLimit() {
        SewingPlan plan = plan(SampleSewing.withCuff(), Set.of(Machine.LOCKSTITCH));
        assertThat(instruction(step(plan, StepKind.BAND_JOIN)))
                .contains("zigzag stretches about 50 %")
                .contains("stretches 60 % around")
                .contains("gives out before the cloth");
        assertThat(instruction(step(plan, StepKind.FRONT_RISE)))
                .contains("stretches 45 % along")
                .contains("keeps up");
        assertThat(instruction(step(plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER), StepKind.FRONT_RISE)))
                .doesNotContain("before its thread breaks");
    }

    /** By hand: leg top 2 x 371.21 = 742.4, band 2 x 345 = 690: 52 mm to stretch in. */
    @Test
    void theBandIsStretchedByWhatItIsShorter() {
        assertThat(instruction(step(plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER), StepKind.BAND_JOIN)))
                .contains("52 mm shorter")
                .contains("stretch the waistband, never the leg top");
    }

    @Test
    void cautionsStandWhereTheHandIs() {
        everywhere((pattern, plan) -> {
            for (SewingPlan.Operation o : plan.operations()) {
                boolean overlock = o.stitch().equals(java.util.Optional.of(Stitch.OVERLOCK_4));
                if (overlock && !isTest(o) && !o.name().equals(StepKind.CROTCH_BAR)) {
                    assertThat(instruction(o)).contains("every pin out before it reaches the knife");
                }
                if (isTest(o) && o.place() != Place.HAND) {
                    assertThat(instruction(o)).contains("Unplug the machine");
                }
                if (o.place() == Place.IRON) {
                    assertThat(instruction(o)).contains("110 C or less").contains("without steam");
                }
            }
        });
    }

    /** Published sanity: a practised sewer takes 0.5 to 1 min per 100 mm of pinned overlock seam (section 11). */
    @Test
    void overlockMinutesLieInTheCustomaryBand() {
        SewingPlan plan = plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER);
        List<SewingPlan.Operation> seams = plan.operations().stream()
                .filter(o -> o.place() == Place.OVERLOCKER && !isTest(o))
                .toList();
        assertThat(perHundred(seams)).isBetween(0.5, 1.0);
    }

    /** As above: 1 to 1.5 min per 100 mm of coverstitch. */
    @Test
    void coverMinutesLieInTheCustomaryBand() {
        SewingPlan plan = plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER);
        List<SewingPlan.Operation> rows = plan.operations().stream()
                .filter(o -> o.place() == Place.COVERSTITCH && !isTest(o))
                .toList();
        assertThat(perHundred(rows)).isBetween(1.0, 1.5);
    }

    private static double perHundred(List<SewingPlan.Operation> operations) {
        double minutes =
                operations.stream().mapToDouble(SewingPlan.Operation::minutes).sum();
        double length =
                operations.stream().mapToDouble(SewingPlan.Operation::length).sum();
        return minutes / (length / 100);
    }

    @Test
    void thePlainPairTakesLessThanAnHour() {
        assertThat(plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER).minutes()).isBetween(40.0, 60.0);
        assertThat(plan(SampleSewing.withCuff(), OVERLOCK_AND_COVER).minutes()).isBetween(40.0, 60.0);
    }

    /** By hand from the operations: length x ratio x 1.15, machine by machine. */
    @Test
    void threadFollowsFromTheSewnLengths() {
        SewingPlan plan = plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER);
        double overlocked = 200 + 285.2 + 344.8 + 1499.4 + 130 + 742.4;
        double covered = 200 + 630 + 80 + 688;
        assertThat(plan.thread().keySet()).containsExactly(Place.OVERLOCKER, Place.COVERSTITCH);
        assertThat(plan.thread().get(Place.OVERLOCKER)).isCloseTo(overlocked / 1000 * 18 * 1.15, within(0.06));
        assertThat(plan.thread().get(Place.COVERSTITCH)).isCloseTo(covered / 1000 * 18 * 1.15, within(0.06));
    }

    @Test
    void aZeroLengthSeamIsAFindingThatNamesIt() {
        Pattern pair = SampleSewing.withCuff();
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.set(
                0,
                new Seam(
                        Seam.Role.FRONT_RISE,
                        SeamName.of(SeamKind.FRONT_RISE),
                        List.of(
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.FRONT_CROTCH, 0),
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.FRONT_CROTCH, Double.NaN)),
                        0,
                        7,
                        1));
        Pattern broken = new Pattern(pair.pieces(), seams, pair.levels(), pair.reductions());
        BadInput bad = catchThrowableOfType(BadInput.class, () -> plan(broken, OVERLOCK_AND_COVER));
        assertThat(bad.findings()).hasSize(2).allMatch(f -> f.key().equals("seams.front rise"));
        assertThat(bad.findings().get(0).line()).contains("leg: front crotch").contains("0 mm long");
    }

    @Test
    void aSeamWithoutItsPieceIsAFinding() {
        Pattern pair = SampleSewing.withCuff();
        Pattern bandless = SampleSewing.without(pair, PieceKind.WAISTBAND, pair.seams());
        BadInput bad = catchThrowableOfType(BadInput.class, () -> plan(bandless, OVERLOCK_AND_COVER));
        assertThat(bad.findings()).extracting(f -> f.key()).contains("seams.waistband join", "seams.waistband ends");
    }

    @Test
    void aPieceWithoutASeamAndAPatternWithoutSeamsAreFindings() {
        Pattern pair = SampleSewing.withCuff();
        assertThatThrownBy(() -> plan(
                        new Pattern(
                                pair.pieces(),
                                SampleSewing.withoutWaistband().seams(),
                                pair.levels(),
                                pair.reductions()),
                        OVERLOCK_AND_COVER))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("pieces.waistband");
        assertThatThrownBy(() -> plan(
                        new Pattern(pair.pieces(), List.of(), pair.levels(), pair.reductions()), OVERLOCK_AND_COVER))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no seam");
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

    private static Pattern withSeam(Pattern pair, Seam seam) {
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.removeIf(s -> s.role() == seam.role());
        seams.add(seam);
        return new Pattern(pair.pieces(), seams, pair.levels(), pair.reductions());
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

    @Test
    void aLongerBandIsSpreadNotStretched() {
        Seam join = new Seam(
                Seam.Role.WAISTBAND_JOIN,
                SeamName.of(SeamKind.WAISTBAND_JOIN),
                List.of(
                        new Seam.Side(PieceName.of(PieceKind.WAISTBAND), EdgeName.LOWER_EDGE, 750),
                        new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.WAIST_EDGE, 742)),
                -8,
                6.5,
                1);
        SewingPlan plan = plan(withSeam(SampleSewing.withCuff(), join), OVERLOCK_AND_COVER);
        assertThat(instruction(step(plan, StepKind.BAND_JOIN)))
                .contains("The waistband is 8 mm longer all round")
                .contains("6.5 mm in from the cut edge")
                .doesNotContain("never the leg top");
    }
}
