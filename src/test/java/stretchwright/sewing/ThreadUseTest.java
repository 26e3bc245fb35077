package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Stitch;

class ThreadUseTest {
    /** Published: thread maker's worked example (S15). 401, 100 cm, 15 cm unpicked: needle 19.5 cm, looper 62 cm. */
    @Test
    void w9UnpickedSeamOfAHundredCentimetres() {
        double exact = ThreadUse.byUnpicking(100, 15, 19.5, 62);
        assertThat(exact).isCloseTo(130 + 413.3, within(0.05));
        double factorsRoundedAsPrinted = ThreadUse.byUnpicking(100, 1, 1.3, 4.1);
        assertThat(factorsRoundedAsPrinted).isCloseTo(540, within(1e-9));
        assertThat(factorsRoundedAsPrinted * (1 + ThreadUse.WASTE)).isCloseTo(621, within(1e-9));
    }

    /** Published: bulletin (S15e). 401, 42 in, 3 in unpicked: 9 and 8 in; prints 6.63 and 7.62 yd, exact 6.61, 7.60. */
    @Test
    void w10UnpickedSeamOfFortyTwoInches() {
        double yards = ThreadUse.byUnpicking(42, 3, 9, 8) / 36;
        assertThat(yards).isCloseTo(6.61, within(0.005)).isCloseTo(6.63, within(0.03));
        assertThat(yards * (1 + ThreadUse.WASTE)).isCloseTo(7.60, within(0.005)).isCloseTo(7.62, within(0.03));
    }

    /** Published: calculator page (S15c). 301 with T 0.01 in, S 10; 101 with T 0.005 in, S 9. */
    @Test
    void w11LockstitchAndSingleChainByFormula() {
        assertThat(ThreadUse.byFormula(301, 0.01, 0, 10)).isCloseTo(2.2, within(1e-9));
        assertThat(ThreadUse.byFormula(101, 0.005, 0, 9)).isCloseTo(3.09, within(1e-9));
    }

    /** By hand from the published formulas (S15b): 12 stitches per inch, seam 1.2 mm thick, stitch 5, 6.4, 6 mm wide. */
    @Test
    void w12FormulasOfTheStretchStitches() {
        double t = 1.2 / 25.4;
        assertFormula(301, t, 5, 3.13);
        assertFormula(401, t, 5, 5.13);
        assertFormula(504, t, 5, 16.7);
        assertFormula(514, t, 5, 17.9);
        assertFormula(516, t, 5, 21.9);
        assertFormula(406, t, 6.4, 14.2);
        assertFormula(602, t, 6.4, 25.4);
        assertFormula(605, t, 6.4, 25.5);
        assertFormula(607, t, 6, 27.9);
        assertThatThrownBy(() -> ThreadUse.byFormula(999, t, 0.2, 12)).hasMessageContaining("999");
    }

    /** Two published overedge formulas (S15b, S15c) differ by 2 in per inch; the table's 14 lies by the lower one. */
    @Test
    void w12TheTwoOveredgeFormulasDifferByTwo() {
        double t = 1.2 / 25.4;
        double w = 5 / 25.4;
        assertThat(ThreadUse.overedgeByTheOtherFormula(t, w, 12)).isCloseTo(14.7, within(0.05));
        assertThat(ThreadUse.byFormula(504, t, w, 12) - ThreadUse.overedgeByTheOtherFormula(t, w, 12))
                .isCloseTo(2, within(1e-9));
    }

    /** By hand: 333 cm of 504: 46.6 m, with waste 53.6 m, of the 46.6 m needle 20 % and loopers 80 % by share; the
     * example's needle 10.7 and loopers 42.9 m are the shares of the 53.6 m. */
    @Test
    void w21WholeGarmentInThreeThreadOverlock() {
        double metres = ThreadUse.metres(Stitch.OVERLOCK_3, 3330);
        assertThat(metres / (1 + ThreadUse.WASTE)).isCloseTo(46.6, within(0.05));
        assertThat(metres).isCloseTo(53.6, within(0.05)).isBetween(40.0, 75.0);
        double needle = metres * ThreadUse.needleShare(Stitch.OVERLOCK_3);
        assertThat(needle).isCloseTo(10.7, within(0.05));
        assertThat(metres - needle).isCloseTo(42.9, within(0.05));
    }

    /** What the threads of a machine take together is what the machine takes, and every thread has a cone of its own. */
    @Test
    void positionsShareAllOfTheThread() {
        for (Stitch stitch : Stitch.values()) {
            double all = ThreadUse.positions(stitch).values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            assertThat(all).as(stitch.plainName()).isCloseTo(1, within(1e-12));
        }
        SewingPlan plan = Planning.plan(
                SamplePattern.overBoot(),
                SampleFabric.heavyKnit(),
                EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        plan.thread().forEach((machine, metres) -> {
            double sum = plan.threads().stream()
                    .filter(t -> t.machine() == machine)
                    .mapToDouble(SewingPlan.Thread::metres)
                    .sum();
            assertThat(sum).as(machine.word()).isCloseTo(metres, within(0.25));
        });
        assertThat(plan.threads()).allSatisfy(t -> assertThat(t.count()).isEqualTo(1));
        assertThat(plan.threads())
                .extracting(SewingPlan.Thread::position)
                .contains(
                        Threading.LEFT_NEEDLE,
                        Threading.RIGHT_NEEDLE,
                        Threading.UPPER_LOOPER,
                        Threading.LOWER_LOOPER,
                        Threading.LOOPER);
    }

    /** By hand: 2,100 m on cones of 1,000 m take three; 201 m on spools of 200 m take two. */
    @Test
    void conesAndSpoolsAreWhole() {
        assertThat(SewingPlan.Thread.of(Place.OVERLOCKER, Threading.LOWER_LOOPER, 2100, 1000)
                        .count())
                .isEqualTo(3);
        assertThat(SewingPlan.Thread.of(Place.LOCKSTITCH, Threading.NEEDLE, 201, 200)
                        .count())
                .isEqualTo(2);
        assertThat(SewingPlan.Thread.of(Place.LOCKSTITCH, Threading.NEEDLE, 200, 200)
                        .count())
                .isEqualTo(1);
    }

    /** Published table as printed (trade-values section 4.1). */
    @Test
    void ratiosAreThePublishedOnes() {
        assertThat(ThreadUse.ratio(Stitch.LOCKSTITCH)).isEqualTo(2.5);
        assertThat(ThreadUse.ratio(Stitch.ZIGZAG)).isEqualTo(7.0);
        assertThat(ThreadUse.ratio(Stitch.CHAINSTITCH)).isEqualTo(5.5);
        assertThat(ThreadUse.ratio(Stitch.COVERSTITCH)).isEqualTo(18.0);
        assertThat(ThreadUse.ratio(Stitch.OVERLOCK_3)).isEqualTo(14.0);
        assertThat(ThreadUse.ratio(Stitch.OVERLOCK_4)).isEqualTo(18.0);
    }

    /** By hand: 3 mm stitches in 1.2 mm: under 6, back 3, twice through 2.4 = 11.4 mm for 3 mm of advance. */
    @Test
    void backstitchFromItsGeometry() {
        assertThat(ThreadUse.backstitch(3, 1.2)).isCloseTo(11.4 / 3, within(1e-12));
    }

    private static void assertFormula(int stitch, double thickness, double widthMm, double expected) {
        double tolerance = expected < 10 ? 0.005 : 0.05;
        assertThat(ThreadUse.byFormula(stitch, thickness, widthMm / 25.4, 12))
                .as("stitch %d", stitch)
                .isCloseTo(expected, within(tolerance));
    }
}
