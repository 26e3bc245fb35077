package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Tolerance;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Slip;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * What a slip of the tape would do: the pattern stays as cut, and the true body is larger or smaller by the usual slip of
 * one measure. All of the fit check is run again on each such body.
 */
final class Slips {
    /** What a verdict about the slips is about. */
    static final Said ABOUT = Tell.said("about.slip");

    /** Named in the verdict at most; the rest stands in the report. */
    private static final int NAMED = 3;

    static final List<Measure> DECIDING = List.of(
            Measure.WAIST_GIRTH,
            Measure.HIP_GIRTH,
            Measure.THIGH_GIRTH,
            Measure.MID_THIGH_GIRTH,
            Measure.KNEE_GIRTH,
            Measure.CALF_GIRTH,
            Measure.ANKLE_GIRTH,
            Measure.HEEL_GIRTH,
            Measure.WAIST_HEIGHT,
            Measure.CROTCH_HEIGHT,
            Measure.KNEE_HEIGHT,
            Measure.TOTAL_CROTCH_LENGTH);

    private static final List<Said> OPENINGS =
            Arrays.stream(OpeningName.values()).map(OpeningName::said).toList();

    private Slips() {}

    static FitReport added(Worn worn, FitReport base) {
        Map<Part, Severity> before = worst(base);
        List<Slip> slips = new ArrayList<>();
        List<Said> stops = new ArrayList<>();
        List<Said> cautions = new ArrayList<>();
        for (Measure measure : DECIDING) {
            double slip = Tolerance.of(worn.body(), measure);
            for (double by : List.of(slip, -slip)) {
                Map<Part, Severity> after = after(worn, measure, by, base, before);
                List<Said> changes = changes(before, after);
                slips.add(new Slip(measure, by, changes));
                if (turnsStop(before, after)) {
                    stops.add(slipped(worn, measure, by, changes));
                } else if (appears(before, after)) {
                    cautions.add(slipped(worn, measure, by, changes));
                }
            }
        }
        List<Verdict> said = new ArrayList<>(base.verdicts());
        if (!stops.isEmpty()) {
            said.add(hangs(CAUTION, stops));
        } else if (!cautions.isEmpty()) {
            said.add(hangs(NOTE, cautions));
        }
        return base.with(slips, FitCheck.sorted(said));
    }

    private static Said slipped(Worn worn, Measure measure, double by, List<Said> changes) {
        Said known = Judge.known(worn.body(), measure);
        Part off = Part.length(Math.abs(by));
        Part what = Part.listed(Part.Join.SEMICOLON, changes);
        return by > 0 ? Tell.said("slip.more", known, off, what) : Tell.said("slip.less", known, off, what);
    }

    private static Verdict hangs(Severity severity, List<Said> on) {
        Part named = Part.listed(Part.Join.SEMICOLON, on.subList(0, Math.min(NAMED, on.size())));
        return new Verdict(
                severity,
                ABOUT,
                on.size() > NAMED
                        ? Tell.said("slip.hangs-and-more", named, Part.count(on.size() - NAMED))
                        : Tell.said("slip.hangs", named),
                Tell.said("slip.help"));
    }

    /** A body whose heights would come out of order cannot be judged: as before then. */
    private static Map<Part, Severity> after(
            Worn worn, Measure measure, double by, FitReport base, Map<Part, Severity> before) {
        if (worn.body().mm(measure) + by <= 0) {
            return before;
        }
        Body other;
        FitReport judged;
        try {
            other = Tolerance.off(worn.body(), measure, by);
            judged = FitCheck.judged(worn.on(other), base.settles());
        } catch (IllegalArgumentException outOfOrder) {
            return before;
        }
        return worst(judged);
    }

    /** The worst that is said about each thing; notes do not count. */
    private static Map<Part, Severity> worst(FitReport fit) {
        Map<Part, Severity> out = new LinkedHashMap<>();
        for (Verdict v : fit.verdicts()) {
            if (v.severity() != NOTE) {
                out.merge(v.about(), v.severity(), (one, other) -> one.compareTo(other) <= 0 ? one : other);
            }
        }
        return out;
    }

    private static List<Said> changes(Map<Part, Severity> before, Map<Part, Severity> after) {
        List<Said> out = new ArrayList<>();
        after.forEach((about, severity) -> {
            if (before.get(about) != severity) {
                out.add(Tell.said("slip.becomes", about, severity.said()));
            }
        });
        before.forEach((about, severity) -> {
            if (!after.containsKey(about)) {
                out.add(Tell.said("slip.no-more", about, severity.said()));
            }
        });
        return out;
    }

    private static boolean turnsStop(Map<Part, Severity> before, Map<Part, Severity> after) {
        return before.containsValue(STOP) != after.containsValue(STOP)
                || after.entrySet().stream().anyMatch(e -> e.getValue() == STOP && before.get(e.getKey()) != STOP);
    }

    /** An opening that is only just passable is no news: its reserve is kept for such a slip, and drafts use it up. */
    private static boolean appears(Map<Part, Severity> before, Map<Part, Severity> after) {
        return after.keySet().stream().anyMatch(about -> !before.containsKey(about) && !OPENINGS.contains(about));
    }
}
