package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fit.FitReport.SeamFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;

/** Which seams break, and what to sew besides. */
final class SeamJudge {
    private SeamJudge() {}

    /** Rings over hips and heel are left to the openings, which ask the same of the same stitch. */
    static List<Verdict> of(List<SeamFit> seams) {
        List<Verdict> out = new ArrayList<>();
        for (SeamFit s : seams) {
            if (s.holds() || s.pose().pulledOn()) {
                continue;
            }
            boolean already = s.standing() > s.stands();
            out.add(new Verdict(
                    already ? STOP : CAUTION,
                    Subject.of(
                            Subject.Kind.SEAM, Tell.said("about.seam", s.seam().said())),
                    Tell.said(
                            "seam.breaks",
                            s.seam().said(),
                            Part.share(s.standing()),
                            Part.share(s.needed()),
                            s.pose().said(),
                            Terms.of(s.stitch()),
                            Part.share(s.stands())),
                    Tell.said("seam.breaks-help", Judge.upTo(s.needed()))));
        }
        return out;
    }
}
