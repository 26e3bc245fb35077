package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Verdict;
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
        for (LevelFit l : levels) {
            strain(l, worn).ifPresent(out::add);
            if (onSkin(l, worn.hemOnBoot())) {
                PressureJudge.of(l, worn.body(), known(l.level(), worn.body())).ifPresent(out::add);
            }
        }
        PressureJudge.rising(levels, worn.body()).ifPresent(out::add);
        return out;
    }

    /** Half of it is the rule; beyond all of it the cloth is not there. */
    private static Optional<Verdict> strain(LevelFit l, Worn worn) {
        Fabric fabric = worn.fabric();
        Said known = known(l.level(), worn.body());
        Subject subject = Subject.at(Subject.Kind.STRAIN, l.level(), l.place());
        if (l.across() > fabric.test().stretchAcross()) {
            return Optional.of(new Verdict(
                    STOP,
                    subject,
                    Tell.said(
                                    "level.beyond",
                                    l.place(),
                                    Part.share(l.across()),
                                    Part.share(fabric.test().stretchAcross()))
                            .and(known),
                    Tell.said("level.beyond-help", Part.share(l.across() * 2))));
        }
        if (l.across() > STANDING_SHARE * fabric.test().stretchAcross()) {
            return Optional.of(new Verdict(
                    CAUTION,
                    subject,
                    Tell.said(
                                    "level.half",
                                    l.place(),
                                    Part.share(l.across()),
                                    Part.share(fabric.test().stretchAcross()))
                            .and(known),
                    Tell.said("level.half-help", Judge.upTo(l.across() * 2))));
        }
        return Optional.empty();
    }

    /** "By the knee girth, measured.": nothing where the girth is the boot's or lies between two measures. */
    private static Said known(Level.Name level, Body body) {
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
