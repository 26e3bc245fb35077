package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;

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
        boolean along = p.direction().equals("along");
        Subject subject = Subject.of(p);
        String numbers = text(
                        "%s, %s %s: needs %.0f %%, and the cloth has %.0f %%",
                        Judge.capital(p.pose()), p.region(), p.direction(), percent(p.needed()), percent(p.available()))
                + (along ? "." : " (" + Judge.known(body, girth(p)) + ").");
        String cloth = text("Cloth of %.0f %% or more %s has enough.", Math.ceil(percent(p.needed())), p.direction());
        if (p.derived()) {
            String derived = " How far the skin grows in this pose is derived here; there is no published figure.";
            return Optional.of(new Verdict(CAUTION, subject, numbers + derived, cloth));
        }
        if (!along || p.needed() > 2 * p.available()) {
            return Optional.of(new Verdict(STOP, subject, numbers, cloth));
        }
        return Optional.of(new Verdict(
                CAUTION, subject, numbers + " The hem will creep up or the band will be pulled down.", cloth));
    }

    private static Measure girth(Pose p) {
        return Poses.level(p.region()).filter(Level.Name.HIP::equals).isPresent()
                ? Measure.HIP_GIRTH
                : Measure.KNEE_GIRTH;
    }

    /**
     * For each region and direction the pose that asks most; the others would only say the same again. A derived one
     * stands beside the published only where it asks more than all of them.
     */
    private static List<Pose> hardest(List<Pose> poses) {
        Map<String, Pose> published = new LinkedHashMap<>();
        Map<String, Pose> derived = new LinkedHashMap<>();
        for (Pose p : poses) {
            (p.derived() ? derived : published)
                    .merge(
                            p.region() + " " + p.direction(),
                            p,
                            (one, other) -> other.needed() > one.needed() ? other : one);
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
    static Optional<Pose> worst(List<Pose> poses, String region, String direction) {
        return poses.stream()
                .filter(p -> p.region().equals(region) && p.direction().equals(direction))
                .reduce((one, other) -> other.needed() > one.needed() ? other : one);
    }
}
