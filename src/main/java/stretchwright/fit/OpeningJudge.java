package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.EASY_SHARE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Opening;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Whether the garment can be put on. */
final class OpeningJudge {
    private OpeningJudge() {}

    static List<Verdict> of(List<Opening> openings, Worn worn) {
        List<Verdict> out = new ArrayList<>();
        for (Opening o : openings) {
            Part wide =
                    Part.length(o.mustPass() / (1 + EASY_SHARE * o.allowed())).atLeast();
            if (!o.passes()) {
                out.add(stop(o, wide, worn));
            } else if (o.needed() > EASY_SHARE * o.allowed() + Judge.ROUNDING) {
                out.add(new Verdict(
                        CAUTION,
                        subject(o),
                        Tell.said("opening.just").and(numbers(o, worn)),
                        Tell.said("opening.just-help", wide)));
            }
        }
        return out;
    }

    private static Verdict stop(Opening o, Part wide, Worn worn) {
        boolean seam = o.allowed() < worn.fabric().test().stretchAcross();
        Part asked = Judge.upTo(o.needed() / EASY_SHARE);
        return new Verdict(
                STOP,
                subject(o),
                Tell.said("opening.stops")
                        .and(numbers(o, worn))
                        .and(seam ? Tell.said("opening.stitch-limits") : Said.NOTHING),
                (seam ? Tell.said("opening.stitch-help", asked, wide) : Tell.said("opening.cloth-help", asked, wide))
                        .and(
                                o.opening() == OpeningName.HEM_OVER_HEEL
                                        ? LowerJudge.orElse(worn.boot(), worn.pattern(), o)
                                        : Said.NOTHING));
    }

    private static Said numbers(Opening o, Worn worn) {
        return Tell.said(
                "opening.numbers",
                o.opening().said(),
                Part.length(o.relaxed()),
                Part.length(o.mustPass()),
                whose(o, worn),
                Part.share(o.needed()),
                Part.share(o.allowed()),
                Part.share(worn.fabric().test().stretchAcross()));
    }

    private static Subject subject(Opening o) {
        Subject.Kind kind = switch (o.opening()) {
            case WAISTBAND_OVER_HIPS -> Subject.Kind.BAND_OPENING;
            case HEM_OVER_HEEL -> Subject.Kind.HEM_OPENING;
            case LEG_OVER_CALF -> Subject.Kind.LEG_OPENING;
        };
        return Subject.of(kind, o.opening().said());
    }

    /** Which measure it is that must pass, and whether it was taken or estimated. */
    private static Said whose(Opening o, Worn worn) {
        List<Measure> possible = o.opening() == OpeningName.WAISTBAND_OVER_HIPS
                ? List.of(Measure.HIP_GIRTH)
                : List.of(Measure.HEEL_GIRTH, Measure.CALF_GIRTH, Measure.KNEE_GIRTH);
        for (Body body : Judge.alsoByLeg(worn.body())) {
            for (Measure measure : possible) {
                if (Math.abs(body.mm(measure) - o.mustPass()) < 1e-9) {
                    return Judge.known(body, measure);
                }
            }
        }
        return Tell.said("known.on-the-boot");
    }
}
