package stretchwright.advice;

import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.draft.Draft;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.fit.PoseTape;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/** The real rooms, joined as far as trials go. */
public final class TrialRooms implements Trials {
    @Override
    public Optional<Body> body(Measured measured, Findings findings) {
        return Measuring.body(measured, findings);
    }

    @Override
    public Optional<Pattern> draft(Body body, MakeFile make, Findings findings) {
        return Draft.of(body, make.fabric(), make.boot(), make.style(), make.machines(), findings);
    }

    @Override
    public FitReport fit(Pattern pattern, Body body, MakeFile make) {
        FitReport fit = FitCheck.of(pattern, body, make.fabric(), make.boot(), make.style(), make.machines());
        return PoseTape.added(fit, make.measured().poseLengths(), pattern, body, make.fabric());
    }

    @Override
    public FitReport judgeUnsettled(Pattern pattern, Body body, MakeFile make) {
        FitReport fit =
                FitCheck.withoutSettling(pattern, body, make.fabric(), make.boot(), make.style(), make.machines());
        return PoseTape.added(fit, make.measured().poseLengths(), pattern, body, make.fabric());
    }

    @Override
    public FitReport judge(Pattern pattern, Body body, MakeFile make) {
        FitReport fit = FitCheck.withoutSlips(pattern, body, make.fabric(), make.boot(), make.style(), make.machines());
        return PoseTape.added(fit, make.measured().poseLengths(), pattern, body, make.fabric());
    }
}
