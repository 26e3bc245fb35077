package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Layers;
import stretchwright.fabric.Likely;
import stretchwright.fabric.PressureSpread;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Strain, tension and pressure standing, level by level. */
final class Levels {
    /** Tape round a boot, mm: two readings agree within 5, as on an ankle. */
    private static final double ON_BOOT = 5 / 2.8;

    private Levels() {}

    static List<FitReport.LevelFit> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<FitReport.LevelFit> out = new ArrayList<>();
        PressureSpread ranges = new PressureSpread(fabric.test().loadAcross());
        boolean onBoot = boot.isPresent() && style.lower().outsideBoot();
        for (Level level : pattern.levels()) {
            double girth =
                    girth(level, pattern, body, boot, style) + style.parts().bulge(level.name());
            double across = Strain.of(level.width(), girth);
            // a band is as high as it was cut; only the leg is pulled along
            boolean band = isDouble(level.name(), style);
            double more = level.name() == Level.Name.KNEE ? PartsJudge.kneeShare(pattern) : 0;
            double taken = level.name() == Level.Name.HIP
                    ? pattern.reductions().rise()
                    : pattern.reductions().along();
            double along = band ? 0 : 1 / ((1 - taken) * (1 + more)) - 1;
            double layers = band ? Layers.TWO : 1;
            // tension per metre as worn: the cloth is longer along than at rest, so the same pull is spread thinner
            double perCurve = layers / (1 + along);
            double tension = perCurve * fabric.test().loadAcross().tension(across);
            double girthSpread = girthSpread(level.name(), body, onBoot, style);
            Likely likely = ranges.of(
                    across, PressureSpread.strain(across, girth, girthSpread), Laplace.kilopascals(perCurve, girth));
            out.add(new FitReport.LevelFit(
                    level.name(),
                    level.leg(),
                    girth,
                    level.width(),
                    across,
                    along,
                    tension,
                    Laplace.kilopascals(tension, girth),
                    fabric.test().loadAcross().isAssumed(),
                    !fabric.test().loadAcross().covers(Math.max(0, across)),
                    likely));
        }
        return out;
    }

    /** A band of two layers holds with both, folded, faced or turned down. */
    private static boolean isDouble(Level.Name level, Style style) {
        return level == Level.Name.WAIST
                || (level == Level.Name.HEM && style.cuffHeight().isPresent());
    }

    private static double girth(Level level, Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        return switch (level.name()) {
            case WAIST -> TrunkProfile.of(body).girthBelowWaist(waistDrop(style));
            case HIP -> body.mm(Measure.HIP_GIRTH);
            case CROTCH -> body.mm(Measure.THIGH_GIRTH);
            case MID_THIGH -> body.mm(Measure.MID_THIGH_GIRTH);
            case KNEE -> body.mm(Measure.KNEE_GIRTH);
            case CALF -> body.mm(Measure.CALF_GIRTH);
            case ANKLE -> body.mm(Measure.ANKLE_GIRTH);
            case BOOT_TOP -> boot.orElseThrow().topGirth();
            case HEM ->
                boot.flatMap(b -> hemOver(b, style.lower().hem()))
                        .orElseGet(() -> GirthProfile.of(body)
                                .girthAt(level.height()
                                        / (1 - pattern.reductions().along())));
        };
    }

    /** A contoured band is narrowest at its upper edge and is compared there; every other band where it is joined. */
    private static double waistDrop(Style style) {
        return style.dropBelowWaist()
                - (style.top().band().shape() == TopEnd.Band.Shape.CONTOURED ? style.bandHeight() : 0);
    }

    /** Girth of the boot where the hem lies; empty where it lies on the leg inside. */
    static Optional<Double> hemOver(Boot boot, LowerEnd.Hem hem) {
        return switch (hem) {
            case INSIDE_BOOT -> Optional.empty();
            case TO_COLLAR -> Optional.of(boot.girthBelowTop(LowerEnd.LUNGE));
            case OVER_LACES, OVER_HEEL -> Optional.of(boot.hemGirth());
            case WHOLE_BOOT -> Optional.of(boot.sole().around());
        };
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
