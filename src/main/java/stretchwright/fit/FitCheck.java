package stretchwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import stretchwright.body.Body;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Judges a pattern on a body before cutting: strain and pressure per level, what must pass, what the poses ask. */
public final class FitCheck {
    private FitCheck() {}

    /** One leg of the pattern on that leg of the body; where the legs are alike there is one view for both. */
    private record View(Pattern pattern, Body body) {}

    public static FitReport of(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> laced, Style style, Set<Machine> machines) {
        Optional<Boot> boot = laced.filter(b -> style.leg() == Style.Leg.OVER_BOOT);
        Set<FitReport.LevelFit> levels = new LinkedHashSet<>();
        List<FitReport.Opening> openings = new ArrayList<>();
        List<FitReport.Pose> poses = new ArrayList<>();
        Set<FitReport.Verdict> verdicts = new LinkedHashSet<>();
        List<FitReport.CoursePoint> course = new ArrayList<>();
        for (View view : views(pattern, body)) {
            List<FitReport.LevelFit> here = Levels.of(view.pattern, view.body, fabric, boot, style);
            levels.addAll(here);
            course.addAll(Course.of(here, view.pattern, view.body, fabric, boot, style));
            verdicts.addAll(
                    Judge.levels(here, fabric, boot.isPresent() && style.lower().outsideBoot()));
            openings.addAll(Openings.of(view.pattern, view.body, fabric, boot, style, machines));
            poses.addAll(Poses.of(here, fabric));
        }
        List<FitReport.Opening> tightest = most(openings, FitReport.Opening::opening, FitReport.Opening::needed);
        List<FitReport.Pose> hardest = most(poses, p -> p.pose() + p.region() + p.direction(), FitReport.Pose::needed);
        verdicts.addAll(Judge.openings(tightest, fabric, LowerJudge.orElse(boot, pattern, tightest)));
        verdicts.addAll(Judge.poses(hardest));
        verdicts.addAll(GarmentJudge.of(pattern, body, fabric, style, hardest));
        verdicts.addAll(LowerJudge.of(pattern, body, boot, style));
        verdicts.addAll(LengthJudge.of(pattern, body, fabric, boot, style));
        List<FitReport.Verdict> sorted = new ArrayList<>(verdicts);
        sorted.sort(Comparator.comparing(FitReport.Verdict::severity));
        return new FitReport(
                List.copyOf(levels), tightest, hardest, List.of(), List.of(), List.of(), List.of(), course, sorted);
    }

    private static List<View> views(Pattern pattern, Body body) {
        if (!pattern.legsDiffer()) {
            return List.of(new View(pattern, body));
        }
        List<View> out = new ArrayList<>();
        for (Side side : Side.values()) {
            out.add(new View(pattern.onlyLeg(side.word()), body.leg(side)));
        }
        return out;
    }

    /** Of those with the same name the one that asks most: the leg that has it hardest. */
    private static <T> List<T> most(List<T> all, Function<T, String> name, ToDoubleFunction<T> needed) {
        Map<String, T> out = new LinkedHashMap<>();
        for (T each : all) {
            out.merge(
                    name.apply(each),
                    each,
                    (one, other) -> needed.applyAsDouble(other) > needed.applyAsDouble(one) ? other : one);
        }
        return List.copyOf(out.values());
    }
}
