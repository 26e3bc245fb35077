package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;

/** Most stretch belongs round the leg: where the cloth has more along its selvage, that is told. */
final class DirectionJudge {
    /** Two tests of one cloth differ by so much, as a share: less is no more stretch (common practice, no source). */
    private static final double ALIKE = 0.02;

    private DirectionJudge() {}

    static List<Verdict> of(Fabric fabric) {
        double across = fabric.test().stretchAcross();
        double along = fabric.test().stretchAlong();
        if (along <= across + ALIKE) {
            return List.of();
        }
        return List.of(new Verdict(
                CAUTION,
                Subject.of(Subject.Kind.CLOTH_DIRECTION, Tell.said("about.cloth-direction")),
                fabric.crosswise()
                        ? Tell.said("direction.crosswise", Part.share(across), Part.share(along))
                        : Tell.said("direction.more-along", Part.share(along), Part.share(across)),
                fabric.crosswise() ? Tell.said("direction.crosswise-help") : Tell.said("direction.more-along-help")));
    }
}
