package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.SeamFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;
import stretchwright.pattern.Seam;
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
        seams.stream().filter(s -> s.seam().equals("back rise")).findFirst().ifPresent(judge::drop);
        return judge.out;
    }

    private void add(Severity severity, String message, String remedy) {
        out.add(new Verdict(severity, "waistband", message, remedy));
    }

    /** An elastic's pull is not in the numbers; without one the band alone must carry the garment by friction. */
    private void grip() {
        if (worn.style().top().band().elastic().isPresent()) {
            return;
        }
        String known = " (" + Judge.known(worn.body(), Measure.WAIST_GIRTH) + ")";
        if (waist.across() <= 0) {
            add(
                    CAUTION,
                    text(
                            "The band is %.0f mm on a girth of %.0f mm%s: it is slack.",
                            waist.width(), waist.girth(), known),
                    "Choose a firmer hold, or a band with an elastic.");
            return;
        }
        double least = least();
        if (!(waist.pressure() < least)) {
            return;
        }
        boolean hips = worn.body().mm(Measure.HIP_GIRTH) > waist.girth();
        add(
                waist.assumed() || hips ? NOTE : CAUTION,
                text(
                        "The band presses with about %.2f kPa%s; to carry the garment by friction alone it takes %.2f.%s%s",
                        waist.pressure(),
                        known,
                        least,
                        hips ? " The hips help to hold it." : "",
                        waist.assumed() ? " The load curve is assumed." : ""),
                "A firmer hold, a higher band or an elastic in it holds more.");
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
                    text(
                            "Over the %.0f mm of the band the body grows by %.0f %%, and a straight band follows up to %.0f %%:"
                                    + " its upper edge will roll over (waist and hip girth; %s).",
                            worn.style().bandHeight(),
                            percent(grows),
                            percent(BandJudge.STRAIGHT_UP_TO),
                            Judge.known(worn.body(), Measure.WAIST_GIRTH)),
                    "Choose a contoured band, or a lower one.");
        }
    }

    private void gape() {
        double slack = waist.width() - upper;
        double ratio = worn.body().mm(Measure.HIP_GIRTH) / worn.body().mm(Measure.WAIST_GIRTH);
        if (slack > 0) {
            add(
                    CAUTION,
                    text(
                            "At its upper edge the band is %.0f mm on a girth of %.0f mm: it gapes by %.0f mm.",
                            waist.width(), upper, slack),
                    "Choose a contoured band, a higher rise or a firmer hold.");
        } else if (ratio > FULL_HIP) {
            add(
                    NOTE,
                    text(
                            "The hip is %.2f times the waist, more than of 95 in 100 women: over a hollow back a straight band"
                                    + " may gape.",
                            ratio),
                    "Baste it; pinch out 6 to 25 mm at centre back of band and legs, or choose a contoured band.");
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
                "band drop",
                text(
                        "In the worst pose (%s) the back rise would need %.0f %% and the cloth has %.0f %% along: the band is"
                                + " pulled down behind by about %.0f mm (%s).",
                        back.pose(),
                        percent(back.needed()),
                        percent(worn.fabric().test().stretchAlong()),
                        lacks,
                        Judge.known(worn.body(), Measure.TOTAL_CROTCH_LENGTH)),
                "Raise the centre back by 15 to 30 mm (back waist), or choose cloth with more stretch along."));
    }
}
