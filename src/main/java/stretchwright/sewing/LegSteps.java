package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** The seams that turn flat legs into a pair: side seams where there are any, rises, inseams, the crotch bar. */
record LegSteps(Pattern pattern, Fabric fabric, Kit kit) {
    /** To each side of the crotch; makers use 25 to 50 mm (trade-values section 4.3, common practice). */
    static final double BAR_EACH_WAY = 40;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.SIDE_SEAM).ifPresent(seams -> steps.add(side(seams)));
        Optional<SeamGroup> front = SeamGroup.of(pattern, Seam.Role.FRONT_RISE);
        Optional<SeamGroup> back = SeamGroup.of(pattern, Seam.Role.BACK_RISE);
        front.ifPresent(seams -> steps.add(rise(StepKind.FRONT_RISE, seams)));
        back.ifPresent(seams -> steps.add(rise(StepKind.BACK_RISE, seams)));
        kit.rowOverRises().ifPresent(row -> row(row, front, back).ifPresent(steps::add));
        Optional<SeamGroup> inseams = SeamGroup.of(pattern, Seam.Role.INSEAM);
        inseams.ifPresent(seams -> {
            steps.add(inseams(seams, front.isPresent() || back.isPresent()));
            if (!gusset()) {
                steps.add(bar(seams));
            }
        });
        return steps;
    }

    /** With a gusset no four seams cross in one point, and no bar is needed. */
    private boolean gusset() {
        return SeamGroup.of(pattern, Seam.Role.GUSSET).isPresent();
    }

    private Step side(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.SIDE_SEAMS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                PartSteps.ON_THE_FLAT_LEG,
                Tell.said("side-seams.do", Words.edges(seams.first()))
                        .and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, seams.first()).and(Tell.said("side-seams.check")));
    }

    private Step rise(StepKind name, SeamGroup seams) {
        Tool tool = kit.seam();
        Said sewn = gusset()
                ? Tell.said("rise.do-gusset", Words.edges(seams.first()))
                : Tell.said("rise.do", Words.edges(seams.first()));
        return Step.sewn(
                name,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                PartSteps.BEFORE_THE_RISES,
                sewn.and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric))
                        .and(name == StepKind.BACK_RISE ? spared() : Said.NOTHING),
                Words.lengths(pattern, seams.first()).and(Tell.said("rise.check")));
    }

    private Said spared() {
        return kit.sparesTheRow() ? Tell.said("rise.row-spared") : Said.NOTHING;
    }

    private Optional<Step> row(Tool tool, Optional<SeamGroup> front, Optional<SeamGroup> back) {
        List<SeamGroup> rises = Stream.concat(front.stream(), back.stream()).toList();
        if (rises.isEmpty()) {
            return Optional.empty();
        }
        double length = rises.stream().mapToDouble(SeamGroup::length).sum();
        int times = rises.stream().mapToInt(SeamGroup::times).sum();
        return Optional.of(Step.sewn(
                StepKind.ROW_OVER_RISES,
                tool,
                Step.SUPERIMPOSED,
                rises.stream().flatMap(r -> r.joins().stream()).toList(),
                length,
                Pace.row(tool.stitch(), length, times),
                Set.of(StepKind.FRONT_RISE, StepKind.BACK_RISE),
                gusset() ? Tell.said("row-over-rises.do-gusset") : Tell.said("row-over-rises.do"),
                Tell.said("row-over-rises.check")));
    }

    private Step inseams(SeamGroup seams, boolean rises) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.INSEAMS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(
                        StepKind.SIDE_SEAMS,
                        StepKind.PANELS,
                        StepKind.FRONT_RISE,
                        StepKind.BACK_RISE,
                        StepKind.ROW_OVER_RISES,
                        StepKind.GUSSET),
                Tell.said("inseams.do", Words.edges(seams.first()))
                        .and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(inseamsRun(rises && seams.times() == 2))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, seams.first())
                        .and(gusset() ? Tell.said("inseams.check-gusset") : Tell.said("inseams.check")));
    }

    private Said inseamsRun(boolean inOneGo) {
        if (gusset()) {
            return Tell.said("inseams.to-gusset");
        }
        return inOneGo ? Tell.said("inseams.in-one-go") : Tell.said("inseams.to-crotch");
    }

    private Step bar(SeamGroup seams) {
        Tool tool = kit.bar();
        double eachWay = Math.min(BAR_EACH_WAY, seams.length() / 2);
        return Step.sewn(
                StepKind.CROTCH_BAR,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                2 * eachWay,
                Pace.row(tool.stitch(), 2 * eachWay, 1).plus(Work.handling(tool.hasKnife() ? Pace.KNIFE : 0)),
                Set.of(StepKind.INSEAMS),
                barSewn(tool, Tell.mm(eachWay))
                        .and(tool.byHand() ? Said.NOTHING : Tell.said("bar.slowly"))
                        .and(tool.hasKnife() ? Tell.said("bar.knife-back") : Said.NOTHING)
                        .and(Words.limitAlong(tool, fabric)),
                Tell.said("bar.check"));
    }

    private static Said barSewn(Tool tool, Part eachWay) {
        if (tool.hasKnife()) {
            return Tell.said("bar.do-knife", eachWay);
        }
        return tool.byHand() ? Tell.said("bar.do-hand", eachWay) : Tell.said("bar.do", eachWay);
    }
}
