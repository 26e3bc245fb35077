package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.List;
import java.util.Optional;
import stretchwright.body.BentKnee;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What stays long after bending: the part of the stretch that does not come back. */
final class RecoveryJudge {
    /** Trade-values section 1.2: good from 90 %, reject for leggings below 85 %. */
    static final double GOOD = 0.90;

    /** A knee that stays this much longer is seen, mm (common practice, no source). */
    static final double SEEN = 5;

    private static final Subject SUBJECT = Subject.of(Subject.Kind.RECOVERY, Tell.said("about.recovery"));

    private RecoveryJudge() {}

    /** What stays, mm: stretch in the pose x (1 - recovery) over the length that is stretched, mm. */
    static double growth(double strain, double recovery, double zone) {
        return strain * (1 - recovery) * zone;
    }

    static List<Verdict> of(Worn worn, List<Pose> poses) {
        double recovery = worn.fabric().test().recovery().orElse(1);
        Optional<Pose> worst = PoseJudge.worst(poses, Region.KNEE, Direction.ALONG);
        double zone = BentKnee.zone(worn.body());
        double stays = worst.map(p -> growth(p.needed(), recovery, zone)).orElse(0.0);
        Said knee = worst.map(p -> Tell.said(
                        "recovery.knee",
                        Part.length(zone),
                        Part.share(p.needed()),
                        p.pose().said(),
                        Part.length(stays)))
                .orElse(Said.NOTHING);
        if (recovery < GOOD) {
            return List.of(new Verdict(
                    CAUTION,
                    SUBJECT,
                    Tell.said("recovery.poor", Part.share(recovery)).and(knee),
                    Tell.said("recovery.poor-help", Part.share(GOOD))));
        }
        return stays < SEEN
                ? List.of()
                : List.of(new Verdict(
                        NOTE,
                        SUBJECT,
                        Tell.said("recovery.stays", Part.share(recovery)).and(knee),
                        Tell.said("recovery.stays-help")));
    }
}
