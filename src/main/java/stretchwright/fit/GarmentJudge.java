package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Moved;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** What concerns the garment as a whole: band, parts, what was estimated, the usual cautions. */
final class GarmentJudge {
    private GarmentJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Fabric fabric, Style style) {
        List<Verdict> out = new ArrayList<>();
        out.addAll(BandJudge.of(pattern, fabric, body, style));
        out.addAll(PartsJudge.of(pattern, style));
        out.addAll(AssumedJudge.of(fabric));
        out.addAll(DirectionJudge.of(fabric));
        estimates(body, out);
        figure(pattern, out);
        if (body.seated()) {
            out.add(new Verdict(
                    CAUTION,
                    Tell.said("about.back-rise"),
                    Tell.said("garment.seated"),
                    Tell.said("garment.seated-help")));
        }
        if (body.figure() == Figure.CHILD) {
            out.add(new Verdict(
                    NOTE, Tell.said("about.waistband"), Tell.said("garment.child"), Tell.said("garment.child-help")));
        }
        return out;
    }

    /** What was named of the figure: which points it moved, or that the measures hold it already. */
    private static void figure(Pattern pattern, List<Verdict> out) {
        pattern.moved().stream().filter(Moved::isFigure).forEach(moved -> {
            List<Part> points = new ArrayList<>();
            moved.shifts()
                    .by()
                    .forEach((shift, mm) -> points.add(Tell.said(
                            "figure.point",
                            shift.said(),
                            Part.length(Math.abs(mm)),
                            shift.way().of(mm))));
            Said told = points.isEmpty()
                    ? Tell.said("figure.measured", moved.by(), Part.length(moved.amount()))
                    : Tell.said(
                            "figure.moved",
                            moved.by(),
                            Part.length(moved.amount()),
                            Part.listed(Part.Join.COMMA, points));
            out.add(new Verdict(NOTE, Tell.said("about.figure"), told, Said.NOTHING));
        });
    }

    private static void estimates(Body body, List<Verdict> out) {
        List<Part> guessed = new ArrayList<>();
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
                guessed.add(Tell.said(
                        "garment.estimate",
                        Terms.of(m),
                        Part.length(body.mm(m)),
                        Part.bare(body.value(m).spread())));
            }
        }
        if (!guessed.isEmpty()) {
            out.add(new Verdict(
                    guessed.size() > 4 ? CAUTION : NOTE,
                    Tell.said("about.measurements"),
                    Tell.said("garment.estimated", Part.listed(Part.Join.COMMA, guessed)),
                    Tell.said("garment.estimated-help")));
        }
    }
}
