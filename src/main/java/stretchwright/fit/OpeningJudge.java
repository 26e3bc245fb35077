package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.EASY_SHARE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Opening;
import stretchwright.fit.FitReport.Verdict;

/** Whether the garment can be put on. */
final class OpeningJudge {
    private OpeningJudge() {}

    static List<Verdict> of(List<Opening> openings, Worn worn) {
        List<Verdict> out = new ArrayList<>();
        double cloth = worn.fabric().test().stretchAcross();
        for (Opening o : openings) {
            double wide = o.mustPass() / (1 + EASY_SHARE * o.allowed());
            String numbers = text(
                    "%s: %.0f mm at rest must pass %.0f mm (%s); that needs %.0f %%, and %.0f %% is there (cloth across: %.0f %%).",
                    o.opening(),
                    o.relaxed(),
                    o.mustPass(),
                    whose(o, worn),
                    percent(o.needed()),
                    percent(o.allowed()),
                    percent(cloth));
            if (!o.passes()) {
                boolean seam = o.allowed() < cloth;
                String what = seam ? "a stitch that stretches %.0f %% or more" : "cloth of %.0f %% or more across";
                out.add(new Verdict(
                        STOP,
                        subject(o),
                        "It will not go on. " + numbers + (seam ? " The stitch is the limit." : ""),
                        text(
                                        "Use " + what + ", or make this opening %.0f mm wide.",
                                        Math.ceil(percent(o.needed() / EASY_SHARE)),
                                        wide)
                                + (o.opening().equals(Openings.HEM)
                                        ? LowerJudge.orElse(worn.boot(), worn.pattern(), openings)
                                        : "")));
            } else if (o.needed() > EASY_SHARE * o.allowed() + Judge.ROUNDING) {
                out.add(new Verdict(
                        CAUTION,
                        subject(o),
                        "It goes on, but only just. " + numbers,
                        text("%.0f mm at rest would pass easily.", wide)));
            }
        }
        return out;
    }

    private static Subject subject(Opening o) {
        Subject.Kind kind = switch (o.opening()) {
            case Openings.BAND -> Subject.Kind.BAND_OPENING;
            case Openings.HEM -> Subject.Kind.HEM_OPENING;
            case Openings.LEG -> Subject.Kind.LEG_OPENING;
            default -> throw new IllegalArgumentException(o.opening());
        };
        return Subject.of(kind, o.opening());
    }

    /** Which measure it is that must pass, and whether it was taken or estimated. */
    private static String whose(Opening o, Worn worn) {
        List<Measure> possible = o.opening().equals(Openings.BAND)
                ? List.of(Measure.HIP_GIRTH)
                : List.of(Measure.HEEL_GIRTH, Measure.CALF_GIRTH, Measure.KNEE_GIRTH);
        for (Body body : Judge.alsoByLeg(worn.body())) {
            for (Measure measure : possible) {
                if (Math.abs(body.mm(measure) - o.mustPass()) < 1e-9) {
                    return Judge.known(body, measure);
                }
            }
        }
        return "measured on the boot";
    }
}
