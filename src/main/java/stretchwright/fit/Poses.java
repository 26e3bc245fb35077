package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Level;

/**
 * What the poses ask of the cloth: the skin lengthens, so 1 + needed = (1 + standing)(1 + skin extension).
 *
 * <p>Skin extensions: Kirk and Ibrahim, Textile Research Journal 36, 1966, from memory (trade-values section 3) for
 * sitting; the deep knee bend is that section's tool default derived from them. Where the cloth slides it spreads what
 * is asked along the leg: about half of it (mechanics method section 5: 20.7 % against 38.5 % at the knee); across it
 * cannot slide. Lunge and high leg have no figures in the sources at hand and are not judged yet.
 */
final class Poses {
    /** Share of the lengthwise extension that is left where the cloth slides freely: (20.7 - 1.7) / (38.5 - 1.7). */
    static final double SLIDING = 0.52;

    private record Extension(String pose, String region, Level.Name level, double across, double along) {}

    private static final List<Extension> TABLE = List.of(
            new Extension("standing", "seat", Level.Name.HIP, 0, 0),
            new Extension("standing", "knee", Level.Name.KNEE, 0, 0),
            new Extension("sitting", "seat", Level.Name.HIP, 0.175, 0.27),
            new Extension("sitting", "knee", Level.Name.KNEE, 0.20, 0.42),
            new Extension("deep knee bend", "seat", Level.Name.HIP, 0.15, 0.30),
            new Extension("deep knee bend", "knee", Level.Name.KNEE, 0.20, 0.40),
            new Extension("sit spin", "seat", Level.Name.HIP, 0.19, 0.395),
            new Extension("sit spin", "knee", Level.Name.KNEE, 0.285, 0.505));

    private Poses() {}

    static List<FitReport.Pose> of(List<FitReport.LevelFit> levels, Fabric fabric) {
        List<FitReport.Pose> out = new ArrayList<>();
        for (Extension e : TABLE) {
            levels.stream().filter(l -> l.level() == e.level).findFirst().ifPresent(l -> {
                out.add(pose(e, "across", l.across(), e.across, e.across, fabric.stretchAcross()));
                out.add(pose(e, "along", l.along(), SLIDING * e.along, e.along, fabric.stretchAlong()));
            });
        }
        return out;
    }

    private static FitReport.Pose pose(
            Extension e, String direction, double standing, double sliding, double stuck, double available) {
        double needed = Strain.then(standing, sliding);
        return new FitReport.Pose(
                e.pose, e.region, direction, needed, Strain.then(standing, stuck), available, needed <= available);
    }
}
