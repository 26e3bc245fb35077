package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/** The numbers printed in docs/maths/sewing.md are those of the code. */
class SewingNoteTest {
    private static String note() throws IOException {
        return Files.readString(Path.of("docs/maths/sewing.md"));
    }

    @Test
    void theTableOfThePlainPairIsThePlan() throws IOException {
        SewingPlan plan = Planning.plan(
                SampleSewing.plainHem(), SampleFabric.heavyKnit(), EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        String note = note();
        for (SewingPlan.Operation o : plan.operations()) {
            assertThat(note)
                    .contains(String.format(
                            Locale.ROOT,
                            "| %d | %s | %s | %.0f | %.1f |",
                            o.step(),
                            o.name().word(),
                            o.place().word(),
                            o.length(),
                            o.minutes()));
        }
        assertThat(note)
                .contains(String.format(
                        Locale.ROOT, "%d changeovers; in all **%.1f min**", plan.changeovers(), plan.minutes()))
                .contains(String.format(
                        Locale.ROOT,
                        "overlocker %.1f m, coverstitch %.1f m",
                        plan.thread().get(Place.OVERLOCKER),
                        plan.thread().get(Place.COVERSTITCH)));
    }

    @Test
    void thePaceAndTheRatiosAreThoseOfTheCode() throws IOException {
        String note = note();
        for (Stitch stitch : Stitch.values()) {
            if (stitch != Stitch.LOCKSTITCH) {
                assertThat(note)
                        .contains(String.format(
                                Locale.ROOT,
                                "| %d %s | %.1f | %.1f |",
                                stitch.number(),
                                stitch.plainName(),
                                Pace.perMetre(stitch),
                                ThreadUse.ratio(stitch)));
            }
        }
    }
}
