package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.GirthGrowth;
import stretchwright.body.SkinExtension;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.ground.Chance;
import stretchwright.pattern.Level;

/**
 * What the poses ask of the cloth: across 1 + needed = (1 + standing)(1 + {@link GirthGrowth}), for cloth round a limb shares out what
 * the skin grows at one place; along by {@link SkinExtension}, of which about half is left where the cloth slides (mechanics
 * method section 5: 20.7 % against 38.5 % at the knee). What the skin grows by at the place itself is kept beside it.
 */
final class Poses {
    /** Share of the lengthwise extension that is left where the cloth slides freely: (20.7 - 1.7) / (38.5 - 1.7). */
    static final double SLIDING = 0.52;

    /** What tape and scissors leave open of a strain along (docs/maths/fit.md, Looseness). */
    private static final double CUT = 0.01;

    private Poses() {}

    static List<FitReport.Pose> of(List<FitReport.LevelFit> levels, Fabric fabric) {
        List<FitReport.Pose> out = new ArrayList<>();
        for (SkinExtension e : SkinExtension.table()) {
            Level.Name level = Region.of(e.region()).level().orElseThrow();
            levels.stream().filter(l -> l.level() == level).findFirst().ifPresent(l -> {
                out.add(across(e, l, fabric.test().stretchAcross()));
                out.add(along(e, l, fabric.test().stretchAlong()));
            });
        }
        return out;
    }

    private static FitReport.Pose across(SkinExtension e, LevelFit l, double available) {
        double growth = GirthGrowth.of(e);
        double standing = (l.likely().strainHigh() - l.across()) / Chance.EIGHT_IN_TEN;
        double spread = Math.hypot((1 + l.across()) * GirthGrowth.spread(e), (1 + growth) * standing);
        double needed = Strain.then(l.across(), growth);
        return pose(e, Direction.ACROSS, needed, Strain.then(l.across(), e.across()), available, spread);
    }

    private static FitReport.Pose along(SkinExtension e, LevelFit l, double available) {
        double sliding = SLIDING * e.along();
        double spread = Math.hypot((1 + l.along()) * GirthGrowth.spreadAlong(sliding), CUT);
        double needed = Strain.then(l.along(), sliding);
        return pose(e, Direction.ALONG, needed, Strain.then(l.along(), e.along()), available, spread);
    }

    private static FitReport.Pose pose(
            SkinExtension e, Direction direction, double needed, double stuck, double available, double spread) {
        return new FitReport.Pose(
                PoseName.of(e),
                Region.of(e.region()),
                direction,
                needed,
                stuck,
                available,
                needed <= available,
                e.basis() == SkinExtension.Basis.DERIVED,
                spread);
    }
}
