package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the poses ask against what the cloth has. */
final class PoseJudge {
    private PoseJudge() {}

    static List<Verdict> of(List<Pose> poses, Body body) {
        List<Verdict> out = new ArrayList<>();
        hardest(poses).forEach(p -> judge(p, body).ifPresent(out::add));
        return out;
    }

    private static Optional<Verdict> judge(Pose p, Body body) {
        if (p.passes()) {
            return Optional.empty();
        }
        boolean along = p.direction() == Direction.ALONG;
        Subject subject = Subject.of(p);
        Said numbers = along ? alongLeg(p) : acrossLeg(p, body);
        Said cloth =
                Tell.said("asked.help", Judge.upTo(p.needed()), p.direction().said());
        if (p.derived()) {
            return Optional.of(new Verdict(CAUTION, subject, numbers.and(Tell.said("asked.derived")), cloth));
        }
        if (!along || p.needed() > 2 * p.available()) {
            return Optional.of(new Verdict(STOP, subject, numbers, cloth));
        }
        return Optional.of(new Verdict(CAUTION, subject, numbers.and(Tell.said("asked.creeps")), cloth));
    }

    private static Said alongLeg(Pose p) {
        return Tell.said(
                "asked.along",
                new Part.Capital(p.pose().said()),
                p.place(),
                Part.share(p.needed()),
                Part.share(p.available()));
    }

    private static Said acrossLeg(Pose p, Body body) {
        return Tell.said(
                "asked.across",
                new Part.Capital(p.pose().said()),
                p.place(),
                Part.share(p.needed()),
                Part.share(p.available()),
                Judge.known(body, p.region() == Region.SEAT ? Measure.HIP_GIRTH : Measure.KNEE_GIRTH));
    }

    /**
     * For each region and direction the pose that asks most; the others would only say the same again. A derived one
     * stands beside the published only where it asks more than all of them.
     */
    private static List<Pose> hardest(List<Pose> poses) {
        Map<Said, Pose> published = new LinkedHashMap<>();
        Map<Said, Pose> derived = new LinkedHashMap<>();
        for (Pose p : poses) {
            (p.derived() ? derived : published)
                    .merge(p.place(), p, (one, other) -> other.needed() > one.needed() ? other : one);
        }
        List<Pose> out = new ArrayList<>(published.values());
        derived.forEach((where, p) -> {
            Pose known = published.get(where);
            if (known == null || p.needed() > known.needed()) {
                out.add(p);
            }
        });
        return out;
    }

    /** The pose that asks most of a region in a direction; empty where there is none. */
    static Optional<Pose> worst(List<Pose> poses, Region region, Direction direction) {
        return poses.stream()
                .filter(p -> p.region() == region && p.direction() == direction)
                .reduce((one, other) -> other.needed() > one.needed() ? other : one);
    }
}
