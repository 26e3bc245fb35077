package stretchwright.many;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.draft.Draft;
import stretchwright.draft.DraftCheck;
import stretchwright.draft.Smoothness;
import stretchwright.draft.Truth;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Pattern;

/** One body drafted in one case, checked and judged. */
final class SurveyTrial {
    private SurveyTrial() {}

    /** How it went; the first that applies. */
    enum Kind {
        CRASHED(Tell.said("kind.crashed")),
        BROKEN(Tell.said("kind.broken")),
        AT_ODDS(Tell.said("kind.at-odds")),
        STOPPED(Tell.said("kind.stopped")),
        HELD(Tell.said("kind.held"));

        private final Said said;

        Kind(Said said) {
            this.said = said;
        }

        Said said() {
            return said;
        }
    }

    /** Why: what it is about, and the sentence with its numbers. */
    record Reason(String about, String words) {}

    /**
     * @param nanos the draft alone took
     * @param correction how far the waist edge at the side lies off its measured place, mm
     * @param bend the tightest of the leg's curves
     * @param worst the worst that the fit check says, a note where it says nothing
     * @param held the pressures reached
     * @param truth how true it is to the body; of a leg in one piece
     * @param evened largest share by which a width from mid-thigh to calf was changed to keep the inseam smooth
     */
    record Outcome(
            Kind kind,
            List<Reason> reasons,
            long nanos,
            double correction,
            Smoothness.Tightest bend,
            double evened,
            FitReport.Severity worst,
            List<SurveyHold.Level> held,
            Optional<Truth> truth) {
        Outcome {
            reasons = List.copyOf(reasons);
            held = List.copyOf(held);
        }

        boolean isDrafted() {
            return kind == Kind.HELD || kind == Kind.STOPPED;
        }
    }

    static Optional<Pattern> draft(Body body, SurveyCase in, Findings findings) {
        return Draft.of(body, in.fabric(), in.bootFor(body), in.style(), in.machines(), findings);
    }

    /** Never throws: a fault of the program is a result here, and the rest of the survey goes on. */
    static Outcome of(Body body, SurveyCase in, LongSupplier nanos) {
        try {
            Findings findings = new Findings("");
            long start = nanos.getAsLong();
            Optional<Pattern> pattern = draft(body, in, findings);
            long took = nanos.getAsLong() - start;
            return pattern.map(p -> judged(body, in, p, took)).orElseGet(() -> atOdds(findings.all(), took));
        } catch (RuntimeException e) {
            return without(Kind.CRASHED, List.of(new Reason(e.getClass().getSimpleName(), String.valueOf(e))), 0);
        }
    }

    private static Outcome atOdds(List<Finding> findings, long took) {
        return without(
                Kind.AT_ODDS,
                findings.stream().map(f -> new Reason(f.key(), f.problem())).toList(),
                took);
    }

    private static Outcome without(Kind kind, List<Reason> reasons, long took) {
        Smoothness.Tightest none = new Smoothness.Tightest(Optional.empty(), Double.POSITIVE_INFINITY);
        return new Outcome(kind, reasons, took, 0, none, 0, FitReport.Severity.STOP, List.of(), Optional.empty());
    }

    private static Outcome judged(Body body, SurveyCase in, Pattern pattern, long took) {
        List<Reason> reasons = new ArrayList<>();
        DraftCheck.broken(body, in.style(), pattern)
                .forEach(b -> reasons.add(
                        new Reason(Voice.plain().say(b.about()), Voice.plain().say(b.said()))));
        Kind kind = reasons.isEmpty() ? Kind.HELD : Kind.BROKEN;
        Optional<Boot> boot = in.bootFor(body);
        FitReport fit = FitCheck.withoutSlips(pattern, body, in.fabric(), boot, in.style(), in.machines());
        Voice voice = Voice.plain();
        if (kind == Kind.HELD && fit.stops()) {
            kind = Kind.STOPPED;
            fit.verdicts().stream()
                    .filter(v -> v.severity() == FitReport.Severity.STOP)
                    .forEach(v -> reasons.add(new Reason(voice.say(v.about()), voice.say(v.message()))));
        }
        return new Outcome(
                kind,
                reasons,
                took,
                DraftCheck.correction(body, in.style(), pattern),
                DraftCheck.tightest(pattern),
                evened(fit, pattern),
                fit.verdicts().stream()
                        .map(FitReport.Verdict::severity)
                        .min(Comparator.naturalOrder())
                        .orElse(FitReport.Severity.NOTE),
                SurveyHold.of(pattern, fit),
                Optional.of(Truth.of(body, in.style(), pattern))
                        .filter(t -> pattern.legs().size() == 1));
    }

    private static double evened(FitReport fit, Pattern pattern) {
        double most = 0;
        for (LevelHold hold : pattern.holds()) {
            boolean shaped = hold.level() == Level.Name.MID_THIGH
                    || hold.level() == Level.Name.KNEE
                    || hold.level() == Level.Name.CALF;
            for (FitReport.LevelFit l : shaped ? fit.levels() : List.<FitReport.LevelFit>of()) {
                if (l.level() == hold.level() && l.leg().equals(hold.leg())) {
                    most = Math.max(most, Math.abs(l.width() / (l.girth() * (1 - hold.reduction())) - 1));
                }
            }
        }
        return most;
    }
}
