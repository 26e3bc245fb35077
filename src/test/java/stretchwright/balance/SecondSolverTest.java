package stretchwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** A plain solver, without bands, tricks or haste, finds the same slides. */
class SecondSolverTest {
    private static final int TRUNK = 3;

    @Tag("slow")
    @Test
    void twoHundredGarmentsSettleWhereAPlainSolverSettlesThem() {
        RandomTubes tubes = new RandomTubes(new RandomStream(22), TRUNK, 6);
        for (int garment = 0; garment < 200; garment++) {
            Tube tube = tubes.tube();
            List<Pose> poses = List.of(tubes.standing(tube), tubes.bent(tube));
            List<Settled> found = Balance.through(tube, poses);
            double[] slides = new double[new PlainSolver(tube, poses.get(0)).unknowns()];
            double[] anchors = new double[slides.length];
            for (int pose = 0; pose < 2; pose++) {
                new PlainSolver(tube, poses.get(pose)).settle(slides, anchors);
                assertThat(found.get(pose).isSettled())
                        .as("garment %d", garment)
                        .isTrue();
                same(found.get(pose), slides, "garment " + garment + ", pose " + pose);
            }
        }
    }

    private static void same(Settled settled, double[] slides, String what) {
        int rings = settled.front().size();
        for (int k = 0; k < rings; k++) {
            double back = slides[k < TRUNK ? 1 + rings + k : 1 + k];
            assertThat(settled.front().get(k)).as(what).isCloseTo(slides[1 + k], within(0.1));
            assertThat(settled.back().get(k)).as(what).isCloseTo(back, within(0.1));
        }
    }
}
