package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Likely;
import stretchwright.fabric.PressureSpread;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.settle.Elastic;
import stretchwright.settle.LegShape;

/** Strain, tension and pressure standing, level by level. */
final class Levels {
    /** Tape round a boot, mm: two readings agree within 5, as on an ankle. */
    private static final double ON_BOOT = 5 / 2.8;

    private Levels() {}

    static List<FitReport.LevelFit> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<FitReport.LevelFit> out = new ArrayList<>();
        LegShape shape = new LegShape(pattern, body, boot, style);
        boolean onBoot = boot.isPresent() && style.lower().outsideBoot();
        for (Level level : pattern.levels()) {
            double girth = shape.girth(level);
            double across = Strain.of(level.width(), girth);
            double along = shape.along(level.name());
            double layers = shape.layers(level.name());
            // tension per metre as worn: the cloth is longer along than at rest, so the same pull is spread thinner
            double perCurve = layers / (1 + along);
            AsWorn cloth = AsWorn.of(fabric, along);
            double tension = perCurve * cloth.tension(across);
            double girthSpread = girthSpread(level.name(), body, onBoot, style);
            Likely likely = new PressureSpread(cloth)
                    .of(
                            across,
                            PressureSpread.strain(across, girth, girthSpread),
                            Laplace.kilopascals(perCurve, girth));
            double pressure = Laplace.kilopascals(tension, girth);
            double elastic =
                    level.name() == Level.Name.WAIST ? Elastic.tension(Elastic.pull(pattern), style.bandHeight()) : 0;
            if (elastic > 0) {
                likely = likely.with(pressure, Laplace.kilopascals(elastic, girth), Elastic.SPREAD);
            }
            out.add(new FitReport.LevelFit(
                    level.name(),
                    level.leg(),
                    girth,
                    level.width(),
                    across,
                    along,
                    tension + elastic,
                    Laplace.kilopascals(tension + elastic, girth),
                    fabric.test().loadAcross().isAssumed(),
                    !fabric.test().loadAcross().covers(Math.max(0, across)),
                    likely));
        }
        return out;
    }

    /** One standard deviation of the girth at a level, mm. */
    private static double girthSpread(Level.Name level, Body body, boolean hemOnBoot, Style style) {
        return switch (level) {
            case BOOT_TOP -> ON_BOOT;
            case HEM -> hemOnBoot ? ON_BOOT : body.value(at(style.leg())).spread();
            default -> body.value(LevelJudge.measure(level).orElseThrow()).spread();
        };
    }

    /** The girth measured nearest to a hem on the leg. */
    private static Measure at(Style.Leg leg) {
        return switch (leg) {
            case SHORT -> Measure.MID_THIGH_GIRTH;
            case KNEE -> Measure.KNEE_GIRTH;
            case CALF -> Measure.CALF_GIRTH;
            default -> Measure.ANKLE_GIRTH;
        };
    }
}
