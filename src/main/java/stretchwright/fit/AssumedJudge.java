package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;

/** A stretch that nobody measured is never used in silence. */
final class AssumedJudge {
    private AssumedJudge() {}

    static List<Verdict> of(Fabric fabric) {
        List<Verdict> out = new ArrayList<>();
        if (fabric.test().assumed().across()) {
            out.add(
                    new Verdict(
                            CAUTION,
                            "stretch across",
                            text(
                                    "The stretch across (%.0f %%) is assumed from the wrap test, not measured: what is said of"
                                            + " openings, poses and the stretch used rests on it.",
                                    percent(fabric.test().stretchAcross())),
                            "Do the fold test across and give fold across; and try the hem over heel or boot with the cloth itself."));
        }
        if (fabric.test().assumed().along()) {
            out.add(new Verdict(
                    CAUTION,
                    "stretch along",
                    text(
                            "The stretch along (%.0f %%) is assumed: no more than the cloth showed when it reached the pose.",
                            percent(fabric.test().stretchAlong())),
                    "Do the fold test along and give fold along."));
        }
        return out;
    }
}
