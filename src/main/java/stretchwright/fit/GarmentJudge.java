package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** What concerns the garment as a whole: band, recovery, show-through, shrinkage, the usual cautions. */
final class GarmentJudge {
    /** Trade-values section 1.2: good from 90 %, reject for leggings below 85 %. */
    static final double GOOD_RECOVERY = 0.90;

    /** Trade-values section 1.3: ask above 5 %. */
    static final double MUCH_SHRINKAGE = 0.05;

    private GarmentJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Fabric fabric, Style style, List<Pose> poses) {
        List<Verdict> out = new ArrayList<>();
        out.addAll(BandJudge.of(pattern, body, style));
        out.addAll(PartsJudge.of(pattern, style));
        out.addAll(AssumedJudge.of(fabric));
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
}
