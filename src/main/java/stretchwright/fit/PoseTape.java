package stretchwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.PoseLength;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;

/**
 * Lengths measured on the wearer, standing and in the pose, against the cloth's stretch along:
 *
 * <p>1 + needed = (pose - allowed drop of the band) / (standing x (1 - reduction)). Derived; common practice, no source.
 */
public final class PoseTape {
    /** The band may be pulled down by less than this in a pose, mm (common practice, no source). */
    static final double BAND_DROP = 15;

    /** One standard deviation of a length over the body, mm: two readings agree within 12. */
    private static final double TAPE = 12 / 2.8;

    private PoseTape() {}

    /** The report with these poses and what they mean. */
    public static FitReport added(FitReport fit, List<PoseLength> lengths, Pattern pattern, Body body, Fabric fabric) {
        if (lengths.isEmpty()) {
            return fit;
        }
        List<FitReport.Pose> own = lengths.stream()
                .map(l -> pose(
                        l, reduction(l, pattern.reductions()), fabric.test().stretchAlong()))
                .toList();
        List<FitReport.Pose> poses = new ArrayList<>(fit.poses());
        poses.addAll(own);
        List<FitReport.Verdict> verdicts = new ArrayList<>(fit.verdicts());
        verdicts.addAll(PoseJudge.of(own, body));
        verdicts.sort(Comparator.comparing(FitReport.Verdict::severity));
        return Notes.few(new FitReport(
                fit.levels(),
                fit.openings(),
                poses,
                fit.seams(),
                fit.covers(),
                fit.lengths(),
                fit.slips(),
                fit.course(),
                fit.settles(),
                verdicts,
                fit.asides()));
    }

    /** Through the legs the crotch seam was shortened, everywhere else the leg. */
    private static double reduction(PoseLength length, Pattern.Reductions reductions) {
        return length.course() == PoseLength.Course.BACK_TO_FRONT ? reductions.crotch() : reductions.along();
    }

    static FitReport.Pose pose(PoseLength l, double reduction, double stretchAlong) {
        double cut = l.standing() * (1 - reduction);
        double needed = Math.max(0, (l.inPose() - BAND_DROP) / cut - 1);
        // where the band does not give way at all
        double held = Math.max(0, l.inPose() / cut - 1);
        return new FitReport.Pose(
                PoseName.YOUR_POSE,
                Region.of(l.course()),
                Direction.ALONG,
                needed,
                held,
                stretchAlong,
                needed <= stretchAlong,
                false,
                TAPE * Math.sqrt(2) / cut);
    }
}
