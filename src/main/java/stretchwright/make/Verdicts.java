package stretchwright.make;

import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;

/** The verdicts of the fit check as lines for people. */
public final class Verdicts {
    private Verdicts() {}

    public static String line(FitReport.Verdict v, Unit unit) {
        return Voice.of(unit).say(v.line());
    }

    /** Such as "1 stop, 2 cautions", or "nothing to say". */
    public static String count(FitReport fit) {
        return Voice.plain().say(fit.count());
    }
}
