package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** What concerns the garment as a whole: band, recovery, show-through, shrinkage, the usual cautions. */
final class GarmentJudge {
    /** Below this ratio the band gathers the leg's top edge visibly (drafting method section 2). */
    static final double LEAST_BAND_RATIO = 0.80;

    /** Trade-values section 1.2: good from 90 %, reject for leggings below 85 %. */
    static final double GOOD_RECOVERY = 0.90;

    /** Trade-values section 1.3: ask above 5 %. */
    static final double MUCH_SHRINKAGE = 0.05;

    /** Heel block 50, sole 10, blade mount 50 mm: estimates of skaters, low confidence; ask the boot. */
    static final double BLADE_LIFT = 110;

    /** Beyond tape error. */
    private static final double TAPE = 20;

    /** Finished bands: low 40 to 60, mid 80 to 100, high 110 to 140 mm (common practice, no source). */
    static final double HIGHEST_BAND = 140;

    private GarmentJudge() {}

    static List<Verdict> of(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style, List<Pose> poses) {
        List<Verdict> out = new ArrayList<>();
        band(pattern, style, out);
        out.addAll(PartsJudge.of(pattern, style));
        recovery(fabric, out);
        showThrough(fabric, poses, out);
        if (Math.max(fabric.shrinkageAcross(), fabric.shrinkageAlong()) > MUCH_SHRINKAGE) {
            out.add(new Verdict(
                    CAUTION,
                    "shrinkage",
                    text(
                            "The cloth shrinks %.0f %% across and %.0f %% along.",
                            percent(fabric.shrinkageAcross()), percent(fabric.shrinkageAlong())),
                    "Wash and dry it as the garment will be, before cutting."));
        }
        estimates(body, out);
        boot.ifPresent(b -> boot(b, body, out));
        if (body.seated()) {
            out.add(
                    new Verdict(
                            CAUTION,
                            "back rise",
                            "The back rise seam runs over the base of the spine, where a seated wearer bears weight.",
                            "Sew it flat, turn no allowance there, and look at the skin after an hour; ask whoever advises on seating."));
        }
        if (body.figure() == Figure.CHILD) {
            out.add(new Verdict(
                    NOTE,
                    "waistband",
                    "For a child: no cord in the band and no ties at the ankle.",
                    "Local rules on cords in children's clothing come first."));
        }
        return out;
    }

    private static void band(Pattern pattern, Style style, List<Verdict> out) {
        double top = pattern.seam(Seam.Role.WAISTBAND_JOIN)
                .orElseThrow()
                .sides()
                .get(0)
                .length();
        double band = 2 * pattern.piece("waistband").edge("lower edge").length();
        if (band / top < LEAST_BAND_RATIO) {
            out.add(new Verdict(
                    CAUTION,
                    "waistband",
                    text(
                            "The band is %.0f mm and the leg tops together %.0f mm: it takes in %.0f %%.",
                            band, top, percent(1 - band / top)),
                    "Stretch the band evenly between the quarter marks; darts or a contoured band would lie flatter."));
        }
        double over = style.bandHeight() - style.dropBelowWaist();
        if (over > HIGHEST_BAND) {
            out.add(new Verdict(
                    CAUTION,
                    "waistband",
                    text(
                            "The band would reach %.0f mm above the waist, up the ribs, and is as narrow there as at the waist.",
                            over),
                    text("Choose a band of %.0f mm or less, or a lower rise.", HIGHEST_BAND)));
        } else if (style.dropBelowWaist() == 0) {
            out.add(new Verdict(
                    NOTE,
                    "waistband",
                    text("The band is joined at the waist and stands %.0f mm above it.", style.bandHeight()),
                    text("For a band that ends at the waist write the rise as %.0f mm below it.", style.bandHeight())));
        }
    }

    private static void recovery(Fabric fabric, List<Verdict> out) {
        double recovery = fabric.recovery().orElse(1);
        if (recovery < GOOD_RECOVERY) {
            out.add(new Verdict(
                    CAUTION,
                    "recovery",
                    text(
                            "The cloth comes back by only %.0f %%: knees will bag and the band will slip.",
                            percent(recovery)),
                    text("Choose cloth that recovers %.0f %% or more.", percent(GOOD_RECOVERY))));
        }
    }

    /** Areal stretch (1 + across)(1 + along) - 1 at its largest, in the sliding bound, against the show-through card. */
    private static void showThrough(Fabric fabric, List<Pose> poses, List<Verdict> out) {
        if (fabric.showsThroughAt().isEmpty()) {
            return;
        }
        double limit = fabric.showsThroughAt().getAsDouble();
        for (Pose across : poses) {
            for (Pose along : poses) {
                if (across.direction().equals("across")
                        && along.direction().equals("along")
                        && across.pose().equals(along.pose())
                        && across.region().equals(along.region())) {
                    double areal = Strain.then(across.needed(), along.needed());
                    if (areal >= limit) {
                        out.add(new Verdict(
                                CAUTION,
                                "show-through",
                                text(
                                        "%s: at the %s the cloth grows by %.0f %% in area; it showed through at %.0f %%.",
                                        across.pose(), across.region(), percent(areal), percent(limit)),
                                "Choose denser cloth, or line this place."));
                        return;
                    }
                }
            }
        }
    }

    private static void estimates(Body body, List<Verdict> out) {
        List<String> guessed = new ArrayList<>();
        for (Measure m : List.of(
                Measure.WAIST_GIRTH,
                Measure.HIP_GIRTH,
                Measure.THIGH_GIRTH,
                Measure.MID_THIGH_GIRTH,
                Measure.KNEE_GIRTH,
                Measure.CALF_GIRTH,
                Measure.ANKLE_GIRTH,
                Measure.CROTCH_HEIGHT,
                Measure.TOTAL_CROTCH_LENGTH,
                Measure.HEEL_GIRTH)) {
            if (!body.isGiven(m)) {
                guessed.add(text(
                        "%s %.0f mm (give or take %.0f)",
                        m.term(), body.mm(m), body.value(m).spread()));
            }
        }
        if (!guessed.isEmpty()) {
            out.add(new Verdict(
                    guessed.size() > 4 ? CAUTION : NOTE,
                    "measurements",
                    "Estimated, not measured: " + String.join(", ", guessed) + ".",
                    "Measure these before cutting good cloth."));
        }
    }

    private static void boot(Boot boot, Body body, List<Verdict> out) {
        double below = boot.ankleToHem() - body.mm(Measure.ANKLE_BONE_HEIGHT);
        if (below > BLADE_LIFT) {
            out.add(new Verdict(
                    below > BLADE_LIFT + TAPE ? STOP : CAUTION,
                    "hem",
                    text(
                            "The hem would end %.0f mm below the floor of the bare foot; heel, sole and blade or wheels together"
                                    + " lift it by about %.0f mm at most. A hem in the blade makes the wearer fall.",
                            below, BLADE_LIFT),
                    text(
                            "Set ankle to hem to %.0f mm or less, and measure it on the boot.",
                            body.mm(Measure.ANKLE_BONE_HEIGHT) + BLADE_LIFT)));
        }
        if (boot.topEstimated()) {
            out.add(new Verdict(
                    NOTE,
                    "boot top",
                    text("The boot's top is taken to stand %.0f mm above the ankle bone.", boot.ankleToTop()),
                    "Measure it and write it as \"ankle to top\"."));
        }
        out.add(new Verdict(
                NOTE,
                "hem",
                "The finished hem must end above the blade holder or the wheels, with no loose cloth and no hanging ends.",
                "Try it with the boot on before skating; the rink's or club's rules come first."));
    }
}
