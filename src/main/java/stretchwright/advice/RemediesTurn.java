package stretchwright.advice;

import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;

/** Whether a change turns a verdict: verdicts are the same by what they are about and by what is said, whatever the numbers. */
final class RemediesTurn {
    private RemediesTurn() {}

    /** How many verdicts about the same are at least so severe. */
    static long count(FitReport fit, Part place, Severity severity) {
        return fit.verdicts().stream()
                .filter(v -> v.severity().compareTo(severity) <= 0 && v.place().equals(place))
                .count();
    }

    /**
     * A change turns a verdict iff it is gone or milder, there are fewer as severe ones about the same, and nothing
     * stops the garment that did not stop it before.
     */
    static boolean turns(Verdict verdict, FitReport before, FitReport after) {
        Part place = verdict.place();
        return !isSaid(verdict, after)
                && count(after, place, verdict.severity()) < count(before, place, verdict.severity())
                && after.verdicts().stream()
                        .filter(v -> v.severity() == Severity.STOP)
                        .allMatch(
                                v -> count(after, v.place(), Severity.STOP) <= count(before, v.place(), Severity.STOP));
    }

    /** Whether the same thing is said, and as severely. */
    private static boolean isSaid(Verdict verdict, FitReport fit) {
        return fit.verdicts().stream()
                .anyMatch(v -> v.severity().compareTo(verdict.severity()) <= 0 && v.saysTheSame(verdict));
    }
}
