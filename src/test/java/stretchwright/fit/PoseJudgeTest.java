package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Severity;

/** What is derived here never stops a garment, and does not hide what is published. */
class PoseJudgeTest {
    private static Pose pose(PoseName name, double needed, boolean derived) {
        return new Pose(name, Region.KNEE, Direction.ALONG, needed, needed, 0.2, needed <= 0.2, derived);
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
                .containsExactly("stop sit spin, knee along", "caution lunge, knee along");
        assertThat(PoseJudge.of(List.of(pose(PoseName.SIT_SPIN, 0.1, false)), SampleBody.smallAdult()))
                .noneMatch(v -> v.severity() != Severity.NOTE);
    }
}
