package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.SkinExtension;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;

/**
 * What the poses ask of the cloth: the skin lengthens, so 1 + needed = (1 + standing)(1 + skin extension).
 *
 * <p>Skin extensions: {@link SkinExtension}. Where the cloth slides it spreads what
 * is asked along the leg: about half of it (mechanics method section 5: 20.7 % against 38.5 % at the knee); across it
 * cannot slide.
 */
final class Poses {
    /** Share of the lengthwise extension that is left where the cloth slides freely: (20.7 - 1.7) / (38.5 - 1.7). */
    static final double SLIDING = 0.52;

    private Poses() {}

    static List<FitReport.Pose> of(List<FitReport.LevelFit> levels, Fabric fabric) {
        List<FitReport.Pose> out = new ArrayList<>();
        for (SkinExtension e : SkinExtension.table()) {
            Level.Name level = Region.of(e.region()).level().orElseThrow();
            levels.stream().filter(l -> l.level() == level).findFirst().ifPresent(l -> {
                out.add(pose(
                        e,
                        Direction.ACROSS,
                        l.across(),
                        e.across(),
                        e.across(),
                        fabric.test().stretchAcross()));
                out.add(pose(
                        e,
                        Direction.ALONG,
                        l.along(),
                        SLIDING * e.along(),
                        e.along(),
                        fabric.test().stretchAlong()));
            });
        }
        return out;
    }

    private static FitReport.Pose pose(
            SkinExtension e, Direction direction, double standing, double sliding, double stuck, double available) {
        double needed = Strain.then(standing, sliding);
        return new FitReport.Pose(
                PoseName.of(e),
                Region.of(e.region()),
                direction,
                needed,
                Strain.then(standing, stuck),
                available,
                needed <= available,
                e.basis() == SkinExtension.Basis.DERIVED);
    }
}
