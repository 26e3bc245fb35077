package stretchwright.advice;

import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;

/**
 * What a verdict says, whatever its numbers.
 *
 * @param saying the message without its numbers
 */
record RemediesKey(String place, String saying) {
    static RemediesKey of(Verdict v) {
        return new RemediesKey(v.place(), v.message().replaceAll("-?[0-9]+([.,][0-9]+)?", "#"));
    }

    /** How many verdicts about the same are at least so severe. */
    static long count(FitReport fit, String place, Severity severity) {
        return fit.verdicts().stream()
                .filter(v -> v.severity().compareTo(severity) <= 0 && v.place().equals(place))
                .count();
    }

    /** Whether the same thing is said, and as severely. */
    boolean isSaidIn(FitReport fit, Severity severity) {
        return fit.verdicts().stream().anyMatch(v -> v.severity().compareTo(severity) <= 0 && of(v).equals(this));
    }

    /**
     * A change turns a verdict iff it is gone or milder, there are fewer as severe ones about the same, and nothing
     * stops the garment that did not stop it before.
     */
    static boolean turns(Verdict verdict, FitReport before, FitReport after) {
        String place = verdict.place();
        return !of(verdict).isSaidIn(after, verdict.severity())
                && count(after, place, verdict.severity()) < count(before, place, verdict.severity())
                && after.verdicts().stream()
                        .filter(v -> v.severity() == Severity.STOP)
                        .allMatch(
                                v -> count(after, v.place(), Severity.STOP) <= count(before, v.place(), Severity.STOP));
    }
}
