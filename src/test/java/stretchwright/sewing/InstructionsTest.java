package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Machine;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;

/** What a step tells whose hands are at it. */
class InstructionsTest extends PlannedSteps {
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
}
