package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Severity;

/** What is derived here never stops a garment, and does not hide what is published. */
class PoseJudgeTest {
    private static Pose pose(String name, double needed, boolean derived) {
        return new Pose(name, "knee", "along", needed, needed, 0.2, needed <= 0.2, derived);
    }

    private static List<String> said(Pose... poses) {
        return PoseJudge.of(List.of(poses), SampleBody.smallAdult()).stream()
                .map(v -> v.severity().word() + " " + v.about())
                .toList();
    }

    @Test
    void aDerivedPoseIsAtMostACaution() {
        assertThat(said(pose("lunge", 0.9, true))).containsExactly("caution lunge, knee along");
        assertThat(said(pose("sit spin", 0.9, false))).containsExactly("stop sit spin, knee along");
        assertThat(PoseJudge.of(List.of(pose("lunge", 0.9, true)), SampleBody.smallAdult())
                        .get(0)
                        .message())
                .contains("no published figure");
    }

    @Test
    void itStandsBesideThePublishedOnlyWhereItAsksMore() {
        assertThat(said(pose("sit spin", 0.5, false), pose("lunge", 0.4, true)))
                .containsExactly("stop sit spin, knee along");
        assertThat(said(pose("sit spin", 0.5, false), pose("lunge", 0.6, true)))
                .containsExactly("stop sit spin, knee along", "caution lunge, knee along");
        assertThat(PoseJudge.of(List.of(pose("sit spin", 0.1, false)), SampleBody.smallAdult()))
                .noneMatch(v -> v.severity() != Severity.NOTE);
    }
}
