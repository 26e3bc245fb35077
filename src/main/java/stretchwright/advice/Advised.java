package stretchwright.advice;

import java.util.List;
import stretchwright.fit.FitReport;

/**
 * What came of trying remedies.
 *
 * @param report the same numbers, with verdicts that name only remedies which were tried
 * @param remedies those that turn a verdict, for each the best first
 */
public record Advised(FitReport report, List<Remedy> remedies) {
    public Advised {
        remedies = List.copyOf(remedies);
    }
}
