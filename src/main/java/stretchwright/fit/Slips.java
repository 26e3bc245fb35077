package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Tolerance;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Slip;
import stretchwright.fit.FitReport.Verdict;

/**
 * What a slip of the tape would do: the pattern stays as cut, and the true body is larger or smaller by the usual slip of
 * one measure. All of the fit check is run again on each such body.
 */
final class Slips {
    /** What a verdict about the slips is about. */
    static final String ABOUT = "slip of the tape";

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

    private static final List<String> OPENINGS = List.of(Openings.BAND, Openings.HEM, Openings.LEG);

    private Slips() {}

    static FitReport added(Worn worn, FitReport base) {
        Map<String, Severity> before = worst(base);
        List<Slip> slips = new ArrayList<>();
        List<String> stops = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (Measure measure : DECIDING) {
            double slip = Tolerance.of(worn.body(), measure);
            for (double by : List.of(slip, -slip)) {
                Map<String, Severity> after = after(worn, measure, by, before);
                List<String> changes = changes(before, after);
                slips.add(new Slip(measure.term(), by, String.join("; ", changes)));
                String words = text(
                        "the %s (%.0f mm %s: %s)",
                        Judge.known(worn.body(), measure),
                        Math.abs(by),
                        by > 0 ? "more" : "less",
                        String.join("; ", changes));
                if (turnsStop(before, after)) {
                    stops.add(words);
                } else if (appears(before, after)) {
                    cautions.add(words);
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

    private static Verdict hangs(Severity severity, List<String> on) {
        List<String> named = on.subList(0, Math.min(NAMED, on.size()));
        String rest = on.size() > NAMED ? text("; and %d more", on.size() - NAMED) : "";
        return new Verdict(
                severity,
                ABOUT,
                "The verdict hangs on " + String.join("; ", named) + rest + ".",
                "Take these again before cutting: twice, and use the mean.");
    }

    /** A body whose heights would come out of order cannot be judged: as before then. */
    private static Map<String, Severity> after(Worn worn, Measure measure, double by, Map<String, Severity> before) {
        if (worn.body().mm(measure) + by <= 0) {
            return before;
        }
        Body other;
        FitReport judged;
        try {
            other = Tolerance.off(worn.body(), measure, by);
            judged = FitCheck.judged(worn.on(other));
        } catch (IllegalArgumentException outOfOrder) {
            return before;
        }
        return worst(judged);
    }

    /** The worst that is said about each thing; notes do not count. */
    private static Map<String, Severity> worst(FitReport fit) {
        Map<String, Severity> out = new TreeMap<>();
        for (Verdict v : fit.verdicts()) {
            if (v.severity() != NOTE) {
                out.merge(v.about(), v.severity(), (one, other) -> one.compareTo(other) <= 0 ? one : other);
            }
        }
        return out;
    }

    private static List<String> changes(Map<String, Severity> before, Map<String, Severity> after) {
        List<String> out = new ArrayList<>();
        after.forEach((about, severity) -> {
            if (before.get(about) != severity) {
                out.add(about + " becomes a " + severity.word());
            }
        });
        before.forEach((about, severity) -> {
            if (!after.containsKey(about)) {
                out.add(about + " is no " + severity.word() + " any more");
            }
        });
        return out;
    }

    private static boolean turnsStop(Map<String, Severity> before, Map<String, Severity> after) {
        return before.containsValue(STOP) != after.containsValue(STOP)
                || after.entrySet().stream().anyMatch(e -> e.getValue() == STOP && before.get(e.getKey()) != STOP);
    }

    /** An opening that is only just passable is no news: its reserve is kept for such a slip, and drafts use it up. */
    private static boolean appears(Map<String, Severity> before, Map<String, Severity> after) {
        return after.keySet().stream().anyMatch(about -> !before.containsKey(about) && !OPENINGS.contains(about));
    }
}
