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
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Strain, tension and pressure standing, level by level. */
final class Levels {
    private Levels() {}

    static List<FitReport.LevelFit> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<FitReport.LevelFit> out = new ArrayList<>();
        for (Level level : pattern.levels()) {
            double girth =
                    girth(level, pattern, body, boot, style) + style.parts().bulge(level.name());
            double across = Strain.of(level.width(), girth);
            // a band is as high as it was cut; only the leg is pulled along
            boolean band = layers(level.name(), style) == 2;
            double more = level.name() == Level.Name.KNEE ? PartsJudge.kneeShare(pattern) : 0;
            double along = band ? 0 : 1 / ((1 - pattern.reductions().along()) * (1 + more)) - 1;
            int layers = layers(level.name(), style);
            // tension per metre as worn: the cloth is longer along than at rest, so the same pull is spread thinner
            double tension = layers * fabric.loadAcross().tension(across) / (1 + along);
            out.add(new FitReport.LevelFit(
                    level.name(),
                    level.leg(),
                    girth,
                    level.width(),
                    across,
                    along,
                    tension,
                    Laplace.kilopascals(tension, girth),
                    fabric.loadAcross().isAssumed(),
                    !fabric.loadAcross().covers(Math.max(0, across))));
        }
        return out;
    }

    /** A folded band holds with both its layers. */
    private static int layers(Level.Name level, Style style) {
        return level == Level.Name.WAIST
                        || (level == Level.Name.HEM && style.cuffHeight().isPresent())
                ? 2
                : 1;
    }

    private static double girth(Level level, Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        return switch (level.name()) {
            case WAIST -> TrunkProfile.of(body).girthBelowWaist(style.dropBelowWaist());
            case HIP -> body.mm(Measure.HIP_GIRTH);
            case CROTCH -> body.mm(Measure.THIGH_GIRTH);
            case MID_THIGH -> body.mm(Measure.MID_THIGH_GIRTH);
            case KNEE -> body.mm(Measure.KNEE_GIRTH);
            case CALF -> body.mm(Measure.CALF_GIRTH);
            case ANKLE -> body.mm(Measure.ANKLE_GIRTH);
            case BOOT_TOP -> boot.orElseThrow().topGirth();
            case HEM ->
                boot.map(Boot::hemGirth)
                        .orElseGet(() -> hemGirth(
                                level.height() / (1 - pattern.reductions().along()), body, style));
        };
    }

    /** Girth of the leg where a hem without a boot sits, at a height above the floor. */
    private static double hemGirth(double height, Body body, Style style) {
        return style.leg() == Style.Leg.ANKLE
                ? body.mm(Measure.ANKLE_GIRTH)
                : GirthProfile.of(body).girthAt(height);
    }
}
