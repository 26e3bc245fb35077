package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** What concerns the garment as a whole: band, parts, what was estimated, the usual cautions. */
final class GarmentJudge {
    private GarmentJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Fabric fabric, Style style) {
        List<Verdict> out = new ArrayList<>();
        out.addAll(BandJudge.of(pattern, body, style));
        out.addAll(PartsJudge.of(pattern, style));
        out.addAll(AssumedJudge.of(fabric));
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
