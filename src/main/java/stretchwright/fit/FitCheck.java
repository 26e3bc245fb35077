package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Judges a pattern on a body before cutting: strain and pressure per level, what must pass, what the poses ask. */
public final class FitCheck {
    private FitCheck() {}

    public static FitReport of(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines) {
        List<FitReport.LevelFit> levels = Levels.of(pattern, body, fabric, boot, style);
        List<FitReport.Opening> openings = Openings.of(pattern, body, fabric, boot, machines);
        List<FitReport.Pose> poses = Poses.of(levels, fabric);
        List<FitReport.Verdict> verdicts = new ArrayList<>();
        verdicts.addAll(Judge.openings(openings, fabric));
        verdicts.addAll(Judge.levels(levels, fabric));
        verdicts.addAll(Judge.poses(poses));
        verdicts.addAll(GarmentJudge.of(pattern, body, fabric, boot, style, poses));
        verdicts.sort(java.util.Comparator.comparing(FitReport.Verdict::severity));
        return new FitReport(levels, openings, poses, verdicts);
    }
}
