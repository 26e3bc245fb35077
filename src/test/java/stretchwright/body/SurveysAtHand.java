package stretchwright.body;

import java.nio.file.Files;
import org.junit.jupiter.api.Assumptions;

/** The shared survey rows; tests that need them are skipped, with the reason, where they are absent. */
final class SurveysAtHand {
    private SurveysAtHand() {}

    static FitBodies.Surveys orSkip() {
        Assumptions.assumeTrue(
                Files.isDirectory(Rows.folder()),
                "skipped: no survey rows at " + Rows.folder() + " (set -Dstretchwright.shared)");
        return FitBodies.Surveys.read();
    }
}
