package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fit.FitReport.SeamFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Seam;

/** Which seams break, and what to sew besides. */
final class SeamJudge {
    private SeamJudge() {}

    /** Rings over hips and heel are left to the openings, which ask the same of the same stitch. */
    static List<Verdict> of(List<SeamFit> seams) {
        List<Verdict> out = new ArrayList<>();
        for (SeamFit s : seams) {
            if (s.holds() || s.pose().startsWith("pulled over")) {
                continue;
            }
            boolean already = s.standing() > s.stands();
            out.add(new Verdict(
                    already ? STOP : CAUTION,
                    Subject.of(Subject.Kind.SEAM, s.seam() + " seam"),
                    text(
                            "The thread breaks: along the %s the cloth is drawn by %.0f %% standing and %.0f %% in the worst"
                                    + " pose (%s), and %s stands about %.0f %%.",
                            s.seam(),
                            percent(s.standing()),
                            percent(s.needed()),
                            s.pose(),
                            s.stitchName(),
                            percent(s.stands())),
                    text(
                            "Sew it with a stitch that stretches %.0f %% or more: zigzag, overlock or coverstitch.",
                            Math.ceil(percent(s.needed())))));
        }
        return out;
    }

    /** Common practice, no source, where not said otherwise in docs/maths/fit.md; empty where nothing is needed. */
    static String reinforcement(Seam.Role role, double needed, double stands) {
        String place = switch (role) {
            case FRONT_RISE, BACK_RISE ->
                "a second row 25 to 50 mm each way over the crotch, its crossing allowances turned opposite ways";
            case GUSSET -> "a short row across each point of the gusset";
            case WAISTBAND_JOIN, CASING -> "no second row: it would stretch less than the join";
            case POCKET_OPENING -> "a short row across each end of the opening";
            default -> "";
        };
        String close = needed > Judge.EASY_SHARE * stands
                ? "sew a test seam, pull it as hard as you can, and shorten the stitch or loosen the needle thread until"
                        + " nothing snaps"
                : "";
        return place.isEmpty() || close.isEmpty() ? place + close : place + "; " + close;
    }
}
