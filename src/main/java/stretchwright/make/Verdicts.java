package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Doubt;
import stretchwright.fit.FitReport;
import stretchwright.ground.Voice;

/** The verdicts of the fit check as lines for people. */
public final class Verdicts {
    private Verdicts() {}

    public static String line(FitReport.Verdict v) {
        return (v.severity().word() + ": " + v.about() + ": " + v.message() + " " + v.remedy())
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** A measure in doubt, as a caution. */
    public static String line(Doubt doubt, Voice voice) {
        return FitReport.Severity.CAUTION.word() + ": " + doubt.measure().term() + ": " + voice.say(doubt.message());
    }

    /** Such as "1 stop, 2 cautions", or "nothing to say". */
    public static String count(FitReport fit) {
        List<String> parts = new ArrayList<>();
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            long n = fit.verdicts().stream()
                    .filter(v -> v.severity() == severity)
                    .count();
            if (n > 0) {
                parts.add(n + " " + severity.word() + (n > 1 ? "s" : ""));
            }
        }
        return parts.isEmpty() ? "nothing to say" : String.join(", ", parts);
    }
}
