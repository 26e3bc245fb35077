package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.List;
import java.util.Optional;
import stretchwright.body.BentKnee;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;

/** What stays long after bending: the part of the stretch that does not come back. */
final class RecoveryJudge {
    /** Trade-values section 1.2: good from 90 %, reject for leggings below 85 %. */
    static final double GOOD = 0.90;

    /** A knee that stays this much longer is seen, mm (common practice, no source). */
    static final double SEEN = 5;

    private static final Subject SUBJECT = Subject.of(Subject.Kind.RECOVERY, "recovery");

    private RecoveryJudge() {}

    /** What stays, mm: stretch in the pose x (1 - recovery) over the length that is stretched, mm. */
    static double growth(double strain, double recovery, double zone) {
        return strain * (1 - recovery) * zone;
    }

    static List<Verdict> of(Worn worn, List<Pose> poses) {
        double recovery = worn.fabric().test().recovery().orElse(1);
        Optional<Pose> worst = PoseJudge.worst(poses, "knee", "along");
        double zone = BentKnee.zone(worn.body());
        double stays = worst.map(p -> growth(p.needed(), recovery, zone)).orElse(0.0);
        String knee = worst.isEmpty()
                ? ""
                : text(
                        " Over the knee, %.0f mm of it, it is drawn by %.0f %% (%s) and stays about %.0f mm longer.",
                        zone, percent(worst.get().needed()), worst.get().pose(), stays);
        if (recovery < GOOD) {
            return List.of(new Verdict(
                    CAUTION,
                    SUBJECT,
                    text(
                                    "The cloth comes back by only %.0f %%: knees will bag and the band will slip.",
                                    percent(recovery))
                            + knee,
                    text("Choose cloth that recovers %.0f %% or more.", percent(GOOD))));
        }
        return stays < SEEN
                ? List.of()
                : List.of(new Verdict(
                        NOTE,
                        SUBJECT,
                        text("The cloth comes back by %.0f %%.", percent(recovery)) + knee,
                        "Let it rest between wearings; a cloth that comes back further bags less."));
    }
}
