package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the poses ask against what the cloth has. */
final class PoseJudge {
    private PoseJudge() {}

    /** What is said of one pose in one direction. */
    private record Asks(Pose pose, Severity severity) {}

    /** One verdict a region, its worst pose first. */
    static List<Verdict> of(List<Pose> poses, Body body) {
        Map<Region, List<Asks>> regions = new EnumMap<>(Region.class);
        for (Pose p : hardest(poses)) {
            severity(p)
                    .ifPresent(s -> regions.computeIfAbsent(p.region(), r -> new ArrayList<>())
                            .add(new Asks(p, s)));
        }
        return regions.values().stream().map(asked -> told(asked, body)).toList();
    }

    private static Optional<Severity> severity(Pose p) {
        if (p.chance() < Comfort.CAUTION_CHANCE) {
            return Optional.empty();
        }
        boolean lacks =
                p.direction() == Direction.ACROSS ? p.chance() >= Comfort.STOP_CHANCE : p.needed() > 2 * p.available();
        return Optional.of(lacks && !p.derived() ? STOP : CAUTION);
    }

    private static Verdict told(List<Asks> asked, Body body) {
        asked.sort(Comparator.comparing(Asks::severity)
                .thenComparing(
                        Comparator.comparingDouble((Asks a) -> a.pose.chance()).reversed()));
        Asks worst = asked.get(0);
        Said message = Said.NOTHING;
        Said help = Said.NOTHING;
        Set<Direction> helped = EnumSet.noneOf(Direction.class);
        for (Asks a : asked) {
            message = message.and(numbers(a, body));
            if (helped.add(a.pose.direction())) {
                help = help.and(Tell.said(
                        "asked.help",
                        Judge.upTo(a.pose.enough()),
                        a.pose.direction().said()));
            }
        }
        return new Verdict(worst.severity, Subject.of(worst.pose), message, help).by(worst.pose.chance());
    }

    private static Said numbers(Asks a, Body body) {
        Said numbers = a.pose.direction() == Direction.ALONG ? alongLeg(a.pose) : acrossLeg(a.pose, body);
        if (a.pose.derived()) {
            return numbers.and(Tell.said("asked.derived"));
        }
        return a.severity == CAUTION && a.pose.direction() == Direction.ALONG
                ? numbers.and(Tell.said("asked.creeps"))
                : numbers;
    }

    private static Said alongLeg(Pose p) {
        return Tell.said(
                "asked.along",
                new Part.Capital(p.pose().said()),
                p.place(),
                Part.share(p.needed()),
                Part.share(p.available()),
                Told.chance(p.chance()));
    }

    private static Said acrossLeg(Pose p, Body body) {
        return Tell.said(
                "asked.across",
                new Part.Capital(p.pose().said()),
                p.place(),
                Part.share(p.needed()),
                Part.share(p.available()),
                Judge.known(body, p.region() == Region.SEAT ? Measure.HIP_GIRTH : Measure.KNEE_GIRTH),
                Told.chance(p.chance()));
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

    /** The pose that asks most of seam and cloth at a region in a direction; empty where there is none. */
    static Optional<Pose> worst(List<Pose> poses, Region region, Direction direction) {
        return poses.stream()
                .filter(p -> p.region() == region && p.direction() == direction)
                .reduce((one, other) -> other.local() > one.local() ? other : one);
    }
}
