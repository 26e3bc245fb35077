package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.SeamFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.TopEnd.Band.Shape;

/** Whether the top edge stays where it was put: grip, roll, gape, and what a squat pulls it down. */
final class BandHoldJudge {
    /** Friction of cloth on skin (commonly put near 0.3; no source at hand). */
    static final double FRICTION = 0.3;

    private static final double GRAVITY = 9.81;

    /** The band may drop this far in a pose before it is felt, mm (common practice, no source). */
    static final double DROP = 15;

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

    static List<Verdict> of(Worn worn, FitReport numbers, List<SeamFit> seams) {
        LevelFit waist = numbers.levels().stream()
                .filter(l -> l.level() == Level.Name.WAIST)
                .findFirst()
                .orElseThrow();
        BandHoldJudge judge = new BandHoldJudge(worn, waist);
        judge.grip();
        if (worn.style().top().band().shape() == Shape.STRAIGHT) {
            judge.roll();
            judge.gape();
        }
        seams.stream()
                .filter(s -> s.seam().equals(SeamName.of(SeamKind.BACK_RISE)))
                .findFirst()
                .ifPresent(judge::drop);
        return judge.out;
    }

    private void add(Severity severity, Said message, Said remedy) {
        out.add(new Verdict(severity, Tell.said("about.waistband"), message, remedy));
    }

    /** An elastic's pull is not in the numbers; without one the band alone must carry the garment by friction. */
    private void grip() {
        if (worn.style().top().band().elastic().isPresent()) {
            return;
        }
        Said known = Judge.known(worn.body(), Measure.WAIST_GIRTH);
        if (waist.across() <= 0) {
            add(
                    CAUTION,
                    Tell.said("hold.slack", Part.length(waist.width()), Part.length(waist.girth()), known),
                    Tell.said("hold.slack-help"));
            return;
        }
        double least = least();
        if (!(waist.pressure() < least)) {
            return;
        }
        boolean hips = worn.body().mm(Measure.HIP_GIRTH) > waist.girth();
        add(
                waist.assumed() || hips ? NOTE : CAUTION,
                Tell.said("hold.grip", Part.fixed(waist.pressure(), 2), known, Part.fixed(least, 2))
                        .and(hips ? Tell.said("hold.hips-help") : Said.NOTHING)
                        .and(waist.assumed() ? Tell.said("hold.curve-assumed") : Said.NOTHING),
                Tell.said("hold.grip-help"));
    }

    /** kPa that carry the garment's weight by friction: weight / (friction x area of the band); 0 where it is not known. */
    double least() {
        double grams = worn.fabric().quality().weight().orElse(0)
                * worn.pattern().pieces().stream()
                        .mapToDouble(p -> p.clothArea() * p.cut())
                        .sum()
                / 1e6;
        return carrying(grams, waist.girth(), worn.style().bandHeight());
    }

    static double carrying(double grams, double girth, double height) {
        double newtons = grams / 1000 * GRAVITY;
        return newtons / (FRICTION * girth * height / 1e6) / 1000;
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

    /** What the back rise lacks in the worst pose, the cloth drawn along as far as it goes, comes off the band. */
    private void drop(SeamFit back) {
        double seam = worn.pattern().seams().stream()
                .filter(s -> s.role() == Seam.Role.BACK_RISE)
                .mapToDouble(Seam::length)
                .sum();
        double lacks = seam * (back.needed() - worn.fabric().test().stretchAlong());
        if (lacks <= 0) {
            return;
        }
        boolean felt = lacks > DROP;
        out.add(new Verdict(
                felt ? CAUTION : NOTE,
                Tell.said("about.band-drop"),
                Tell.said(
                        "hold.drops",
                        back.pose().said(),
                        Part.share(back.needed()),
                        Part.share(worn.fabric().test().stretchAlong()),
                        Part.length(lacks),
                        Judge.known(worn.body(), Measure.TOTAL_CROTCH_LENGTH)),
                Tell.said("hold.drops-help", Part.span(15, 30))));
    }
}
