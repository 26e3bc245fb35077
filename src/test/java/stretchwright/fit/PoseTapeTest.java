package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stretchwright.body.PoseLength;
import stretchwright.body.SampleBody;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;

/** Lengths in a pose, and stretch that was assumed. */
class PoseTapeTest {
    private static FitReport.Pose pose(double standing, double inPose, double reduction, double cloth) {
        return PoseTape.pose(new PoseLength(PoseLength.Course.THIGH_TO_SHIN, standing, inPose), reduction, cloth);
    }

    /** (780 - 15) / (700 x 0.95) - 1 = 15.04 %; with the band held fast 780 / 665 - 1 = 17.29 % (derived). */
    @Test
    void whatIsNeededFollowsFromBothLengthsAndTheReduction() {
        FitReport.Pose pose = pose(700, 780, 0.05, 0.45);
        assertThat(pose.needed()).isCloseTo(0.150376, within(1e-6));
        assertThat(pose.neededIfStuck()).isCloseTo(0.172932, within(1e-6));
        assertThat(pose.passes()).isTrue();
    }

    @Test
    void aLengthThatHardlyGrowsNeedsNothing() {
        assertThat(pose(700, 705, 0, 0.3).needed()).isZero();
    }

    @Test
    void tooLittleStretchIsACautionAndLessThanHalfAStop() {
        assertThat(PoseJudge.of(List.of(pose(600, 735, 0, 0.15)), SampleBody.smallAdult()))
                .singleElement()
                .satisfies(v -> {
                    assertThat(v.severity()).isEqualTo(FitReport.Severity.CAUTION);
                    assertThat(words(v.message()))
                            .contains("Your pose, top of thigh to shin along: needs about 20 %", "has 15 %");
                });
        assertThat(PoseJudge.of(List.of(pose(600, 735, 0, 0.09)), SampleBody.smallAdult()))
                .singleElement()
                .satisfies(v -> assertThat(v.severity()).isEqualTo(FitReport.Severity.STOP));
    }

    @Test
    void anAssumedStretchIsNeverSilent() {
        assertThat(AssumedJudge.of(SampleFabric.heavyKnit())).isEmpty();
        assertThat(AssumedJudge.of(assumed(true, false)))
                .singleElement()
                .satisfies(v -> assertThat(words(v.message())).contains("across (57 %) is assumed", "openings, poses"));
        assertThat(AssumedJudge.of(assumed(true, true))).hasSize(2);
    }

    private static Fabric assumed(boolean across, boolean along) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, 0),
                new Fabric.Roll("", 1400, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        0.571,
                        0.2,
                        LoadCurve.assumed(0.571),
                        LoadCurve.assumed(0.2),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.125),
                        new Fabric.Assumed(across, along)));
    }
}
