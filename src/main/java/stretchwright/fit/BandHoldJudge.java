package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.TopEnd.Band.Shape;

/** Whether a straight band follows the body at its upper edge: roll and gape. */
final class BandHoldJudge {
    /** Hip over waist at the 95th percentile of 1986 women (ANSUR II, 2012): beyond it a straight band is likely to gape. */
    static final double FULL_HIP = 1.335;

    private final Worn worn;
    private final LevelFit waist;
    private final TrunkProfile trunk;
    private final double lower;
    private final double upper;
    private final List<Verdict> out = new ArrayList<>();

    private BandHoldJudge(Worn worn, LevelFit waist) {
        this.worn = worn;
        this.waist = waist;
        this.trunk = TrunkProfile.of(worn.body());
        double drop = worn.style().dropBelowWaist();
        this.lower = trunk.girthBelowWaist(drop);
        this.upper = trunk.girthBelowWaist(drop - worn.style().bandHeight());
    }

    static List<Verdict> of(Worn worn, FitReport numbers) {
        LevelFit waist = numbers.levels().stream()
                .filter(l -> l.level() == Level.Name.WAIST)
                .findFirst()
                .orElseThrow();
        BandHoldJudge judge = new BandHoldJudge(worn, waist);
        if (worn.style().top().band().shape() == Shape.STRAIGHT) {
            judge.roll();
            judge.gape();
        }
        return judge.out;
    }

    private void add(Severity severity, Said message, Said remedy) {
        out.add(new Verdict(severity, Tell.said("about.waistband"), message, remedy));
    }

    /** A straight band follows a body that grows by no more than {@link BandJudge#STRAIGHT_UP_TO} over its height. */
    private void roll() {
        double grows = Strain.of(Math.min(lower, upper), Math.max(lower, upper));
        if (grows > BandJudge.STRAIGHT_UP_TO) {
            add(
                    CAUTION,
                    Tell.said(
                            "hold.rolls",
                            Part.length(worn.style().bandHeight()),
                            Part.share(grows),
                            Part.share(BandJudge.STRAIGHT_UP_TO),
                            Judge.known(worn.body(), Measure.WAIST_GIRTH)),
                    Tell.said("hold.rolls-help"));
        }
    }

    private void gape() {
        double slack = waist.width() - upper;
        double ratio = worn.body().mm(Measure.HIP_GIRTH) / worn.body().mm(Measure.WAIST_GIRTH);
        if (slack > 0) {
            add(
                    CAUTION,
                    Tell.said("hold.gapes", Part.length(waist.width()), Part.length(upper), Part.length(slack)),
                    Tell.said("hold.gapes-help"));
        } else if (ratio > FULL_HIP) {
            add(
                    NOTE,
                    Tell.said("hold.full-hip", Part.fixed(ratio, 2)),
                    Tell.said("hold.full-hip-help", Part.span(6, 25)));
        }
    }
}
