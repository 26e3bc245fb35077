package stretchwright.advice;

import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.fit.FitReport;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/** The rooms that a change of a make is tried in; an empty answer leaves at least one finding. */
public interface Trials {
    Optional<Body> body(Measured measured, Findings findings);

    Optional<Pattern> draft(Body body, MakeFile make, Findings findings);

    FitReport fit(Pattern pattern, Body body, MakeFile make);

    /** The fit check's verdicts alone, for trials: what a slip would do and the course for the plots are left out. */
    default FitReport judge(Pattern pattern, Body body, MakeFile make) {
        return fit(pattern, body, make);
    }

    /** And without where edges settle, for trials on what has nothing to do with it. */
    default FitReport judgeUnsettled(Pattern pattern, Body body, MakeFile make) {
        return judge(pattern, body, make);
    }
}
