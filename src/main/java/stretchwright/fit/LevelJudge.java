package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;

/** What the numbers of each level mean, standing. */
final class LevelJudge {
    /** Standing, at most half of the stretch may be used (docs/maths/fit.md, Limits; common practice, no source). */
    static final double STANDING_SHARE = 0.5;

    private LevelJudge() {}

    static List<Verdict> of(List<LevelFit> levels, Worn worn) {
        List<Verdict> out = new ArrayList<>();
        strain(levels, worn).ifPresent(out::add);
        PressureJudge.of(levels, worn).ifPresent(out::add);
        return out;
    }

    /** A level that uses much of the stretch. */
    private record Drawn(LevelFit at, Severity severity, double chance) {}

    /** Half of it is the rule; beyond all of it the cloth is not there: told once, the worst level first. */
    private static Optional<Verdict> strain(List<LevelFit> levels, Worn worn) {
        double all = worn.fabric().test().stretchAcross();
        List<Drawn> drawn = levels.stream()
                .filter(l -> l.across() > STANDING_SHARE * all)
                .map(l -> l.across() > all
                        ? new Drawn(l, STOP, above(all, l))
                        : new Drawn(l, CAUTION, above(STANDING_SHARE * all, l)))
                .sorted(Comparator.comparing(Drawn::severity)
                        .thenComparing(Comparator.comparingDouble((Drawn d) -> d.at.across())
                                .reversed()))
                .toList();
        return drawn.isEmpty() ? Optional.empty() : Optional.of(told(drawn, all, worn));
    }

    private static double above(double limit, LevelFit l) {
        double spread = (l.likely().strainHigh() - l.across()) / Chance.EIGHT_IN_TEN;
        return Chance.below(l.across(), limit, spread);
    }

    private static Verdict told(List<Drawn> drawn, double all, Worn worn) {
        Drawn worst = drawn.get(0);
        LevelFit l = worst.at;
        boolean stop = worst.severity == STOP;
        Part used = Part.share(l.across());
        Said message = (stop
                        ? Tell.said("level.beyond", l.place(), used, Part.share(all))
                        : Tell.said("level.half", l.place(), used, Part.share(all)))
                .and(others(drawn.subList(1, drawn.size())))
                .and(known(l.level(), PressureJudge.ofLeg(worn.body(), l.leg())));
        Said help = stop
                ? Tell.said("level.beyond-help", Part.share(l.across() * 2))
                : Tell.said("level.half-help", Judge.upTo(l.across() * 2));
        return new Verdict(worst.severity, Subject.at(Subject.Kind.STRAIN, l.level(), l.place()), message, help)
                .by(worst.chance);
    }

    private static Said others(List<Drawn> rest) {
        List<Part> told = new ArrayList<>();
        rest.forEach(d -> told.add(Tell.said("level.other", d.at.place(), Part.share(d.at.across()))));
        return told.isEmpty() ? Said.NOTHING : Tell.said("level.others", Part.listed(Part.Join.COMMA, told));
    }

    /** "By the knee girth, measured.": nothing where the girth is the boot's or lies between two measures. */
    static Said known(Level.Name level, Body body) {
        return measure(level)
                .map(m -> Tell.said("level.known", Judge.known(body, m)))
                .orElse(Said.NOTHING);
    }

    static Optional<Measure> measure(Level.Name level) {
        return switch (level) {
            case WAIST -> Optional.of(Measure.WAIST_GIRTH);
            case HIP -> Optional.of(Measure.HIP_GIRTH);
            case CROTCH -> Optional.of(Measure.THIGH_GIRTH);
            case MID_THIGH -> Optional.of(Measure.MID_THIGH_GIRTH);
            case KNEE -> Optional.of(Measure.KNEE_GIRTH);
            case CALF -> Optional.of(Measure.CALF_GIRTH);
            case ANKLE -> Optional.of(Measure.ANKLE_GIRTH);
            case BOOT_TOP, HEM -> Optional.empty();
        };
    }

    static boolean onSkin(LevelFit l, boolean hemOnBoot) {
        return l.level() != Level.Name.BOOT_TOP && !(l.level() == Level.Name.HEM && hemOnBoot);
    }
}
