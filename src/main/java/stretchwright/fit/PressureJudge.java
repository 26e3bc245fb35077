package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;

/** Pressure against {@link Comfort}; what must be said of circulation is said once for the garment. */
final class PressureJudge {
    /** Above the calf by more than this the thigh is taken to be tighter (common practice, no source). */
    private static final double RISING = 1.1;

    private PressureJudge() {}

    private static double limit(LevelFit l, Body body) {
        return l.level() == Level.Name.WAIST ? Comfort.band(body.age()) : Comfort.CAUTION;
    }

    /** @param known whether the girth was measured */
    static Optional<Verdict> of(LevelFit l, Body body, Said known) {
        double mmHg = Laplace.toMmHg(l.pressure());
        boolean band = l.level() == Level.Name.WAIST;
        double stop = band ? Comfort.STOP_BAND : Comfort.STOP;
        if (mmHg <= (band ? Comfort.band(body.age()) : Comfort.NOTE)) {
            return Optional.empty();
        }
        Said message = Tell.said(
                        "pressure.about", l.place(), new Part.Pressure(l.pressure(), 0), Part.fixed(l.pressure(), 1))
                .and(indication(l))
                .and(known);
        if (mmHg > stop && !l.assumed()) {
            Part most = new Part.Pressure(Laplace.fromMmHg(stop), 0);
            return one(STOP, l, message, Tell.said("pressure.stop-help", most));
        }
        if (mmHg > limit(l, body)) {
            Said device = mmHg > Comfort.DEVICE && !band ? Tell.said("pressure.device") : Said.NOTHING;
            return one(CAUTION, l, message.and(device), Tell.said("pressure.help"));
        }
        return one(NOTE, l, message, Said.NOTHING);
    }

    private static Said indication(LevelFit l) {
        if (l.assumed()) {
            return Tell.said("pressure.assumed");
        }
        return l.beyondReadings() ? Tell.said("pressure.beyond-readings") : Said.NOTHING;
    }

    private static Optional<Verdict> one(FitReport.Severity severity, LevelFit l, Said message, Said remedy) {
        return Optional.of(
                new Verdict(severity, Subject.at(Subject.Kind.PRESSURE, l.level(), l.place()), message, remedy));
    }

    /** Once for the garment, where any place on the skin is over its caution (trade-values section 12). */
    static List<Verdict> circulation(List<LevelFit> levels, Worn worn) {
        boolean tight = levels.stream()
                .anyMatch(l ->
                        LevelJudge.onSkin(l, worn.hemOnBoot()) && Laplace.toMmHg(l.pressure()) > limit(l, worn.body()));
        if (!tight) {
            return List.of();
        }
        return List.of(new Verdict(
                CAUTION,
                Tell.said("about.circulation"),
                Tell.said("pressure.circulation").and(Tell.said("pressure.clinician")),
                Tell.said("pressure.circulation-help")));
    }

    /** A thigh tighter than the calf holds the blood back (section 2.3). */
    static Optional<Verdict> rising(List<LevelFit> levels, Body body) {
        double calf = pressureAt(levels, Level.Name.CALF);
        for (Level.Name name : List.of(Level.Name.CROTCH, Level.Name.MID_THIGH)) {
            double thigh = pressureAt(levels, name);
            if (calf > 0 && thigh > RISING * calf && Laplace.toMmHg(thigh) > Comfort.NEGLIGIBLE) {
                return Optional.of(new Verdict(
                        CAUTION,
                        Subject.at(Subject.Kind.RISING_PRESSURE, name, Terms.of(name)),
                        Tell.said(
                                "pressure.rises",
                                new Part.Pressure(thigh, 1),
                                Terms.of(name),
                                Judge.known(body, LevelJudge.measure(name).orElseThrow()),
                                Part.fixed(Laplace.toMmHg(calf), 1),
                                Judge.known(body, Measure.CALF_GIRTH)),
                        Tell.said("pressure.rises-help")));
            }
        }
        return Optional.empty();
    }

    private static double pressureAt(List<LevelFit> levels, Level.Name name) {
        return levels.stream()
                .filter(l -> l.level() == name)
                .mapToDouble(LevelFit::pressure)
                .findFirst()
                .orElse(0);
    }
}
