package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** How many verdicts there are of each severity. */
final class Tally {
    private Tally() {}

    /** "1 stop, 2 cautions", or "nothing to say". */
    static Part of(List<Verdict> verdicts) {
        List<Part> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long n = verdicts.stream().filter(v -> v.severity() == severity).count();
            if (n > 0) {
                counts.add(count(severity, n));
            }
        }
        return counts.isEmpty() ? Tell.said("tally.nothing") : Part.listed(Part.Join.COMMA, counts);
    }

    private static Said count(Severity severity, long n) {
        Part number = Part.count(n);
        return switch (severity) {
            case STOP -> n == 1 ? Tell.said("tally.stop", number) : Tell.said("tally.stops", number);
            case CAUTION -> n == 1 ? Tell.said("tally.caution", number) : Tell.said("tally.cautions", number);
            case NOTE -> n == 1 ? Tell.said("tally.note", number) : Tell.said("tally.notes", number);
        };
    }
}
