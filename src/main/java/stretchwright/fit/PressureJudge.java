package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.text;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;

/** Pressure against {@link Comfort}; what must be said of circulation is said once for the garment. */
final class PressureJudge {
    /** Above the calf by more than this the thigh is taken to be tighter (common practice, no source). */
    private static final double RISING = 1.1;

    private PressureJudge() {}

    private static double limit(LevelFit l) {
        return l.level() == Level.Name.WAIST ? Comfort.CAUTION_BAND : Comfort.CAUTION;
    }

    /** @param known whether the girth was measured, as words */
    static Optional<Verdict> of(LevelFit l, String known) {
        double mmHg = Laplace.toMmHg(l.pressure());
        boolean band = l.level() == Level.Name.WAIST;
        double stop = band ? Comfort.STOP_BAND : Comfort.STOP;
        if (mmHg <= (band ? Comfort.CAUTION_BAND : Comfort.NOTE)) {
            return Optional.empty();
        }
        String indication = "";
        if (l.assumed()) {
            indication = " The load curve is assumed and not measured, so take this as an indication.";
        } else if (l.beyondReadings()) {
            indication = " That lies beyond the last reading; the curve is carried on straight.";
        }
        String message = text("At the %s the pressure is about %.0f mmHg (%.1f kPa).", l.place(), mmHg, l.pressure())
                + indication
                + known;
        if (mmHg > stop && !l.assumed()) {
            return one(STOP, l, message, text("Stay below %.0f mmHg: choose a lighter hold or a softer cloth.", stop));
        }
        if (mmHg > limit(l)) {
            String device = mmHg > Comfort.DEVICE && !band ? " That is in the range of medical compression." : "";
            return one(CAUTION, l, message + device, "A lighter hold or a softer cloth lowers the pressure.");
        }
        return one(NOTE, l, message, "");
    }

    private static Optional<Verdict> one(FitReport.Severity severity, LevelFit l, String message, String remedy) {
        return Optional.of(
                new Verdict(severity, Subject.at(Subject.Kind.PRESSURE, l.level(), l.place()), message, remedy));
    }

    /** Once for the garment, where any place on the skin is over its caution (trade-values section 12). */
    static List<Verdict> circulation(List<LevelFit> levels, Worn worn) {
        boolean tight = levels.stream()
                .anyMatch(l -> LevelJudge.onSkin(l, worn.hemOnBoot()) && Laplace.toMmHg(l.pressure()) > limit(l));
        if (!tight) {
            return List.of();
        }
        return List.of(new Verdict(
                CAUTION,
                "circulation",
                "The cloth presses hard enough to matter to blood and nerves, and this is no medical device. With poor"
                        + " circulation, heart failure, or diabetes with loss of feeling do not wear it without asking a"
                        + " clinician.",
                "Take it off if the leg turns numb, cold or blue or tingles, or if a mark stays for more than half an"
                        + " hour."));
    }

    /** A thigh tighter than the calf holds the blood back (section 2.3). */
    static Optional<Verdict> rising(List<LevelFit> levels, Body body) {
        double calf = pressureAt(levels, Level.Name.CALF);
        for (Level.Name name : List.of(Level.Name.CROTCH, Level.Name.MID_THIGH)) {
            double thigh = pressureAt(levels, name);
            if (calf > 0 && thigh > RISING * calf && Laplace.toMmHg(thigh) > Comfort.NEGLIGIBLE) {
                return Optional.of(new Verdict(
                        CAUTION,
                        Subject.at(Subject.Kind.RISING_PRESSURE, name, name.word()),
                        text(
                                "The pressure rises going up the leg: %.1f mmHg at the %s (%s), %.1f at the calf (%s).",
                                Laplace.toMmHg(thigh),
                                name.word(),
                                Judge.known(body, LevelJudge.measure(name).orElseThrow()),
                                Laplace.toMmHg(calf),
                                Judge.known(body, Measure.CALF_GIRTH)),
                        "Check the thigh and calf girths; a lighter hold makes the difference smaller."));
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
