package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Minutes of a plan and the thread it takes. */
class PlannedAmountsTest extends PlannedSteps {
    @Test
    void theTotalIsTheSumOfTheStepsAndTheChangeovers() {
        SewingPlan plan = plan(SampleSewing.plainHem(), OVERLOCK_AND_COVER);
        double steps = plan.operations().stream()
                .mapToDouble(SewingPlan.Operation::minutes)
                .sum();
        assertThat(plan.changeovers()).isEqualTo(3);
        assertThat(plan.minutes()).isCloseTo(steps + 3 * 0.5, within(1e-9));
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
}
