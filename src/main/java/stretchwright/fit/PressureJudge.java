package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.WhichLeg;

/**
 * Pressure against {@link Comfort}, by the chance that it is over its limit: told once for the garment, the worst level first.
 * What must be said of circulation is said once as well.
 */
final class PressureJudge {
    /** Above the calf by more than this the thigh is taken to be tighter (common practice, no source). */
    private static final double RISING = 1.1;

    private PressureJudge() {}

    /** A level whose pressure may be over its limit. */
    private record Tight(LevelFit at, Severity severity, double limit, double chance) {}

    private static double limit(LevelFit l, Body body) {
        return l.level() == Level.Name.WAIST ? Comfort.band(body.age()) : Comfort.CAUTION;
    }

    private static double over(double mmHg, LevelFit l) {
        return Chance.above(mmHg, Laplace.toMmHg(l.pressure()), l.likely().spread());
    }

    private static Optional<Tight> tight(LevelFit l, Body body) {
        double stop = l.level() == Level.Name.WAIST ? Comfort.STOP_BAND : Comfort.STOP;
        double chance = over(stop, l);
        if (chance >= Comfort.STOP_CHANCE && l.likely().tensionSpread() <= CurveSpread.WEIGHED) {
            return Optional.of(new Tight(l, STOP, stop, chance));
        }
        double limit = limit(l, body);
        chance = over(limit, l);
        if (chance < Comfort.NOTE_CHANCE) {
            return Optional.empty();
        }
        return Optional.of(new Tight(l, chance >= Comfort.CAUTION_CHANCE ? CAUTION : NOTE, limit, chance));
    }

    static Optional<Verdict> of(List<LevelFit> levels, Worn worn) {
        List<Tight> tight = levels.stream()
                .filter(l -> LevelJudge.onSkin(l, worn.hemOnBoot()))
                .flatMap(l -> tight(l, worn.body()).stream())
                .sorted(Comparator.comparing(Tight::severity)
                        .thenComparing(Comparator.comparingDouble(Tight::chance).reversed()))
                .toList();
        return tight.isEmpty() ? Optional.empty() : Optional.of(told(tight, worn));
    }

    private static Verdict told(List<Tight> tight, Worn worn) {
        Tight worst = tight.get(0);
        LevelFit l = worst.at;
        Said message = Tell.said(
                        "pressure.about",
                        l.place(),
                        Told.of(l).said(),
                        new Part.Pressure(Laplace.fromMmHg(worst.limit), 0),
                        Told.chance(worst.chance))
                .and(others(tight.subList(1, tight.size())))
                .and(indication(l))
                .and(LevelJudge.known(l.level(), ofLeg(worn.body(), l.leg())));
        boolean band = l.level() == Level.Name.WAIST;
        if (worst.severity == CAUTION && !band && Laplace.toMmHg(l.pressure()) > Comfort.DEVICE) {
            message = message.and(Tell.said("pressure.device"));
        }
        Said help = switch (worst.severity) {
            case STOP -> Tell.said("pressure.stop-help", new Part.Pressure(Laplace.fromMmHg(worst.limit), 0));
            case CAUTION -> Tell.said("pressure.help");
            case NOTE -> Said.NOTHING;
        };
        return new Verdict(worst.severity, Subject.at(Subject.Kind.PRESSURE, l.level(), l.place()), message, help)
                .by(worst.chance);
    }

    private static Said others(List<Tight> rest) {
        List<Part> told = new ArrayList<>();
        for (Tight t : rest) {
            Part limit = new Part.Pressure(Laplace.fromMmHg(t.limit), 0);
            told.add(Tell.said("pressure.other", t.at.place(), Told.of(t.at).said(), limit, Told.chance(t.chance)));
        }
        return told.isEmpty() ? Said.NOTHING : Tell.said("pressure.others", Part.listed(Part.Join.SEMICOLON, told));
    }

    private static Said indication(LevelFit l) {
        if (l.assumed()) {
            return Tell.said("pressure.assumed");
        }
        if (l.likely().tensionSpread() > CurveSpread.WEIGHED) {
            return Tell.said("pressure.far-reading");
        }
        return l.beyondReadings() ? Tell.said("pressure.beyond-readings") : Said.NOTHING;
    }

    static Body ofLeg(Body body, WhichLeg leg) {
        return switch (leg) {
            case BOTH -> body;
            case LEFT -> body.leg(Side.LEFT);
            case RIGHT -> body.leg(Side.RIGHT);
        };
    }

    /** Once for the garment, where a caution or stop of pressure is told of a place on the skin (trade-values section 12). */
    static List<Verdict> circulation(List<LevelFit> levels, Worn worn) {
        boolean tight = of(levels, worn).filter(v -> v.severity() != NOTE).isPresent();
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
        Optional<LevelFit> calf = at(levels, Level.Name.CALF).filter(l -> l.pressure() > 0);
        for (Level.Name name : List.of(Level.Name.CROTCH, Level.Name.MID_THIGH)) {
            Optional<Verdict> told = at(levels, name)
                    .filter(t -> Laplace.toMmHg(t.pressure()) > Comfort.NEGLIGIBLE)
                    .flatMap(t -> calf.filter(c -> t.pressure() > RISING * c.pressure())
                            .map(c -> rises(t, c, body)));
            if (told.isPresent()) {
                return told;
            }
        }
        return Optional.empty();
    }

    private static Verdict rises(LevelFit thigh, LevelFit calf, Body body) {
        return new Verdict(
                CAUTION,
                Subject.at(Subject.Kind.RISING_PRESSURE, thigh.level(), Terms.of(thigh.level())),
                Tell.said(
                        "pressure.rises",
                        Part.number(thigh.pressure() / calf.pressure(), 1),
                        Terms.of(thigh.level()),
                        Judge.known(body, LevelJudge.measure(thigh.level()).orElseThrow()),
                        Told.of(thigh).said(),
                        Told.of(calf).said(),
                        Judge.known(body, Measure.CALF_GIRTH)),
                Tell.said("pressure.rises-help"));
    }

    private static Optional<LevelFit> at(List<LevelFit> levels, Level.Name name) {
        return levels.stream().filter(l -> l.level() == name).findFirst();
    }
}
