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
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.settle.SettleRange;

/** Judges a pattern on a body before cutting: strain and pressure per level, what must pass, what the poses ask. */
public final class FitCheck {
    private FitCheck() {}

    /** All of it, with the course along the leg and what a slip of the tape would do. */
    public static FitReport of(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> laced, Style style, Set<Machine> machines) {
        Worn worn = new Worn(pattern, body, fabric, laced, style, machines);
        FitReport judged = judged(worn, Optional.of(SettleJudge.range(worn, true)));
        return Notes.few(Slips.added(worn, judged)).withCourse(course(worn));
    }

    /** The same without course, slips and pulls, for those who judge many patterns: a tenth of the work. */
    public static FitReport withoutSlips(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> laced, Style style, Set<Machine> machines) {
        Worn worn = new Worn(pattern, body, fabric, laced, style, machines);
        return Notes.few(judged(worn, Optional.of(SettleJudge.range(worn, false))));
    }

    /** And without where edges settle. */
    public static FitReport withoutSettling(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> laced, Style style, Set<Machine> machines) {
        return Notes.few(judged(new Worn(pattern, body, fabric, laced, style, machines), Optional.empty()));
    }

    private static List<FitReport.CoursePoint> course(Worn worn) {
        List<FitReport.CoursePoint> out = new ArrayList<>();
        for (Worn leg : worn.legs()) {
            List<FitReport.LevelFit> here = Levels.of(leg.pattern(), leg.body(), leg.fabric(), leg.boot(), leg.style());
            out.addAll(Course.of(here, leg.pattern(), leg.body(), leg.fabric(), leg.boot(), leg.style()));
        }
        return out;
    }

    static FitReport judged(Worn worn, Optional<SettleRange> settles) {
        Set<FitReport.LevelFit> levels = new LinkedHashSet<>();
        List<FitReport.Opening> openings = new ArrayList<>();
        List<FitReport.Pose> poses = new ArrayList<>();
        Set<FitReport.Verdict> verdicts = new LinkedHashSet<>();
        for (Worn leg : worn.legs()) {
            List<FitReport.LevelFit> here = Levels.of(leg.pattern(), leg.body(), leg.fabric(), leg.boot(), leg.style());
            levels.addAll(here);
            PressureJudge.rising(here, leg.body()).ifPresent(verdicts::add);
            verdicts.addAll(SlackJudge.of(leg, here));
            openings.addAll(
                    Openings.of(leg.pattern(), leg.body(), leg.fabric(), leg.boot(), leg.style(), leg.machines()));
            poses.addAll(Poses.of(here, leg.fabric()));
        }
        Fabric fabric = worn.fabric();
        FitReport numbers = new FitReport(
                List.copyOf(levels),
                most(openings, FitReport.Opening::opening, FitReport.Opening::needed),
                most(poses, p -> List.of(p.pose(), p.region(), p.direction()), FitReport.Pose::needed),
                List.of());
        List<FitReport.SeamFit> seams = Seams.of(worn, numbers);
        List<Cover> covers = Covers.of(numbers.poses(), fabric);
        List<LengthFit> lengths = Washing.of(worn);
        verdicts.addAll(LevelJudge.of(numbers.levels(), worn));
        verdicts.addAll(PressureJudge.circulation(numbers.levels(), worn));
        verdicts.addAll(HoldJudge.of(numbers.levels(), worn));
        verdicts.addAll(OpeningJudge.of(numbers.openings(), worn));
        verdicts.addAll(PoseJudge.of(numbers.poses(), worn.body()));
        verdicts.addAll(SeamJudge.of(seams));
        verdicts.addAll(Covers.judged(covers));
        verdicts.addAll(BandHoldJudge.of(worn, numbers));
        verdicts.addAll(SettleJudge.of(worn, settles));
        verdicts.addAll(RecoveryJudge.of(worn, numbers.poses()));
        verdicts.addAll(Washing.judged(lengths, worn));
        verdicts.addAll(GarmentJudge.of(worn.pattern(), worn.body(), fabric, worn.style()));
        verdicts.addAll(LowerJudge.of(worn.pattern(), worn.body(), worn.boot(), worn.style()));
        verdicts.addAll(LengthJudge.of(worn.pattern(), worn.body(), fabric, worn.boot(), worn.style()));
        return new FitReport(
                numbers.levels(),
                numbers.openings(),
                numbers.poses(),
                seams,
                covers,
                lengths,
                List.of(),
                List.of(),
                settles,
                sorted(verdicts));
    }

    /** Most severe first; else in the order in which they were found. */
    static List<FitReport.Verdict> sorted(Iterable<FitReport.Verdict> verdicts) {
        List<FitReport.Verdict> out = new ArrayList<>();
        verdicts.forEach(out::add);
        out.sort(Comparator.comparing(FitReport.Verdict::severity));
        return out;
    }

    /** Of those with the same name the one that asks most: the leg that has it hardest. */
    private static <T> List<T> most(List<T> all, Function<T, Object> name, ToDoubleFunction<T> needed) {
        Map<Object, T> out = new LinkedHashMap<>();
        for (T each : all) {
            out.merge(
                    name.apply(each),
                    each,
                    (one, other) -> needed.applyAsDouble(other) > needed.applyAsDouble(one) ? other : one);
        }
        return List.copyOf(out.values());
    }
}
