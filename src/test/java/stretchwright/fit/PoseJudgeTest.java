package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.Likely;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Severity;
import stretchwright.ground.Chance;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** One verdict a region, the worst pose first; what is derived here never stops a garment, and does not hide what is published. */
class PoseJudgeTest {
    private static Pose pose(PoseName name, double needed, boolean derived) {
        return new Pose(name, Region.KNEE, Direction.ALONG, needed, needed, 0.2, needed <= 0.2, derived, 0.03);
    }

    private static List<String> said(Pose... poses) {
        return PoseJudge.of(List.of(poses), SampleBody.smallAdult()).stream()
                .map(v -> v.severity().word() + " " + words(v.about()))
                .toList();
    }

    @Test
    void aDerivedPoseIsAtMostACaution() {
        assertThat(said(pose(PoseName.LUNGE, 0.9, true))).containsExactly("caution lunge, knee along");
        assertThat(said(pose(PoseName.SIT_SPIN, 0.9, false))).containsExactly("stop sit spin, knee along");
        assertThat(words(PoseJudge.of(List.of(pose(PoseName.LUNGE, 0.9, true)), SampleBody.smallAdult())
                        .get(0)
                        .message()))
                .contains("no published figure");
    }

    @Test
    void itStandsBesideThePublishedOnlyWhereItAsksMore() {
        assertThat(said(pose(PoseName.SIT_SPIN, 0.5, false), pose(PoseName.LUNGE, 0.4, true)))
                .containsExactly("stop sit spin, knee along");
        assertThat(said(pose(PoseName.SIT_SPIN, 0.5, false), pose(PoseName.LUNGE, 0.6, true)))
                .containsExactly("stop sit spin, knee along");
        assertThat(words(PoseJudge.of(
                                List.of(pose(PoseName.SIT_SPIN, 0.5, false), pose(PoseName.LUNGE, 0.6, true)),
                                SampleBody.smallAdult())
                        .get(0)
                        .message()))
                .startsWith("Sit spin, knee along")
                .contains("Lunge, knee along", "no published figure");
        assertThat(PoseJudge.of(List.of(pose(PoseName.SIT_SPIN, 0.1, false)), SampleBody.smallAdult()))
                .noneMatch(v -> v.severity() != Severity.NOTE);
    }

    /** By hand at 15 % standing: 8 % x 28.5 / 20, so 1.15 x 1.114 - 1 = 28.11 % of the girth decides; 1.15 x 1.285 - 1 = 47.8 % is what the knee's skin asks there. */
    @Test
    void theGirthDecidesAndTheSkinIsToldBesideIt() {
        LevelFit knee = new LevelFit(
                Level.Name.KNEE,
                WhichLeg.BOTH,
                365,
                317.4,
                0.15,
                0.05,
                20,
                0.5,
                false,
                false,
                new Likely(0.13, 0.17, 0.3, 0.8, 0.3, 0.1));
        Pose spin = Poses.of(List.of(knee), SampleFabric.with(1470, 0.40, 0.45, true)).stream()
                .filter(p -> p.pose() == PoseName.SIT_SPIN && p.direction() == Direction.ACROSS)
                .findFirst()
                .orElseThrow();
        assertThat(spin.needed()).isCloseTo(0.2811, within(1e-9));
        assertThat(spin.neededIfStuck()).isCloseTo(0.47775, within(1e-9));
        assertThat(spin.local()).isEqualTo(spin.neededIfStuck());
        assertThat(spin.passes()).isTrue();
        // 4 to 12 % hold 8 in 10: 0.0312 x 1.425 x 1.15, and the strain's own 0.0156 x 1.114
        assertThat(spin.chance()).isCloseTo(Chance.below(0.2811, 0.40, Math.hypot(0.05115, 0.01738)), within(1e-4));
    }

    /** The cloth's stretch swept in tenths of a point: no chance jumps, at 28.5 % as little as anywhere. */
    @Tag("slow")
    @Test
    void noPoseHangsOnATenthOfAPercent() {
        Body body = SampleBody.smallAdult();
        Style style = Style.usual(Style.Leg.ANKLE).with(new Hold.Fixed(0));
        Pattern pattern = Draft.of(
                        body, SampleFabric.with(1470, 0.285, 0.3, true), Optional.empty(), style, new Findings("test"))
                .orElseThrow();
        double before = Double.NaN;
        for (double stretch = 0.02; stretch < 0.40; stretch += 0.001) {
            double now = FitCheck.withoutSlips(
                            pattern,
                            body,
                            SampleFabric.with(1470, stretch, 0.3, true),
                            Optional.empty(),
                            style,
                            Set.of(Machine.OVERLOCKER))
                    .poses()
                    .stream()
                    .filter(p -> p.region() == Region.KNEE && p.direction() == Direction.ACROSS)
                    .filter(p -> p.pose() == PoseName.SIT_SPIN)
                    .findFirst()
                    .orElseThrow()
                    .chance();
            if (!Double.isNaN(before)) {
                assertThat(now).isLessThanOrEqualTo(before).isCloseTo(before, within(0.015));
            }
            before = now;
        }
    }
}
