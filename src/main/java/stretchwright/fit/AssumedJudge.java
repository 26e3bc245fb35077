package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Usual;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Part.Join;

/** What nobody measured of the cloth is never used in silence. */
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
        if (fabric.usual().any()) {
            out.add(usual(fabric));
        }
        return out;
    }

    /** Where only the width is assumed the pattern is proven, and the lay is not. */
    private static Verdict usual(Fabric fabric) {
        Usual usual = fabric.usual();
        Part width = Tell.said("assumed.width", Part.length(fabric.roll().usableWidth()));
        if (!usual.stretch()) {
            return new Verdict(
                    NOTE,
                    Tell.said("about.cloth"),
                    Tell.said("assumed.usual-width", width),
                    Tell.said("assumed.usual-width-help"));
        }
        List<Part> all = new ArrayList<>();
        if (usual.across()) {
            all.add(Tell.said(
                    "assumed.share",
                    Tell.said("about.stretch-across"),
                    Part.share(fabric.test().stretchAcross())));
        }
        if (usual.along()) {
            all.add(Tell.said(
                    "assumed.share",
                    Tell.said("about.stretch-along"),
                    Part.share(fabric.test().stretchAlong())));
        }
        if (usual.width()) {
            all.add(width);
        }
        return new Verdict(
                CAUTION,
                Tell.said("about.cloth"),
                Tell.said("assumed.usual", Part.listed(Join.COMMA, all)),
                Tell.said("assumed.usual-help"));
    }
}
