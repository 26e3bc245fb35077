package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;

/** A stretch that nobody measured is never used in silence. */
final class AssumedJudge {
    private AssumedJudge() {}

    static List<Verdict> of(Fabric fabric) {
        List<Verdict> out = new ArrayList<>();
        if (fabric.test().assumed().across()) {
            out.add(new Verdict(
                    CAUTION,
                    Tell.said("about.stretch-across"),
                    Tell.said("assumed.across", Part.share(fabric.test().stretchAcross())),
                    Tell.said("assumed.across-help")));
        }
        if (fabric.test().assumed().along()) {
            out.add(new Verdict(
                    CAUTION,
                    Tell.said("about.stretch-along"),
                    Tell.said("assumed.along", Part.share(fabric.test().stretchAlong())),
                    Tell.said("assumed.along-help")));
        }
        return out;
    }
}
