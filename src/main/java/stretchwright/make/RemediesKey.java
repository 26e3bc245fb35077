package stretchwright.make;

import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;

/**
 * What a verdict is about, in words that stay when its numbers change: of a pose its region and direction, because
 * another pose may become the hardest one.
 *
 * @param about the place, opening or region
 * @param saying the message without its numbers
 */
record RemediesKey(String about, String saying) {
    static RemediesKey of(Verdict v) {
        return new RemediesKey(place(v), v.message().replaceAll("-?[0-9]+([.,][0-9]+)?", "#"));
    }

    static String place(Verdict v) {
        int comma = v.about().lastIndexOf(", ");
        return comma < 0 ? v.about() : v.about().substring(comma + 2);
    }

    /** How many verdicts about the same are at least so severe. */
    static long count(FitReport fit, String place, Severity severity) {
        return fit.verdicts().stream()
                .filter(v -> v.severity().compareTo(severity) <= 0 && place(v).equals(place))
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
        String place = place(verdict);
        return !of(verdict).isSaidIn(after, verdict.severity())
                && count(after, place, verdict.severity()) < count(before, place, verdict.severity())
                && after.verdicts().stream()
                        .filter(v -> v.severity() == Severity.STOP)
                        .allMatch(v -> count(after, place(v), Severity.STOP) <= count(before, place(v), Severity.STOP));
    }
}
