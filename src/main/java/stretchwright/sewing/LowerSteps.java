package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** What is sewn below the legs beside cuffs and hems: boot covers, straps. Common practice, no source. */
record LowerSteps(Pattern pattern, Fabric fabric, Kit kit) {
    /** Minutes to turn a narrow tube right side out, or to fit a fastening at one end of an elastic. */
    static final double TURN = 1.5;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.COVER_SEAM).ifPresent(s -> steps.add(covers(s)));
        SeamGroup.of(pattern, Seam.Role.COVER_JOIN).ifPresent(s -> steps.add(joinCovers(s)));
        SeamGroup.of(pattern, Seam.Role.STRAP_EDGES).ifPresent(s -> steps.add(tubes(s)));
        SeamGroup.of(pattern, Seam.Role.STRAP_ENDS).ifPresent(s -> steps.add(ends(s)));
        notion(pattern, NotionName.STRAP).ifPresent(n -> steps.add(elastic(n)));
        return steps;
    }

    static Optional<Notion> notion(Pattern pattern, NotionName name) {
        return pattern.notions().stream().filter(n -> n.name() == name).findFirst();
    }

    private Step covers(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.COVERS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(),
                Tell.said("covers.do")
                        .and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Tell.said("covers.check"));
    }

    private Step joinCovers(SeamGroup join) {
        Tool tool = kit.seam();
        Seam.Side leg = join.first().sides().get(0);
        Seam.Side cover = join.first().sides().get(1);
        return Step.sewn(
                StepKind.COVER_JOIN,
                tool,
                Step.SUPERIMPOSED,
                join.joins(),
                join.length(),
                Pace.ringSeam(tool.stitch(), join.length(), join.times()),
                Set.of(StepKind.COVERS, StepKind.SIDE_SEAMS, StepKind.INSEAMS),
                Tell.said("cover-join.do")
                        .and(Words.stretch(cover, leg, Words.Ring.COVER))
                        .and(Words.sewLine(join.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAround(tool, fabric)),
                Tell.said("cover-join.check"));
    }

    private Step tubes(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.STRAP_EDGES,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()).plus(Work.handling(seams.times() * TURN)),
                Set.of(),
                Tell.said("strap-edges.do", Words.edges(seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAround(tool, fabric)),
                Tell.said("strap-edges.check"));
    }

    private Step ends(SeamGroup seams) {
        Tool tool = kit.tack();
        return Step.sewn(
                StepKind.STRAP_ENDS,
                tool,
                Step.LAPPED,
                seams.joins(),
                2 * seams.length(),
                Pace.flatSeam(tool.stitch(), 2 * seams.length(), seams.times()),
                Set.of(StepKind.STRAP_EDGES, StepKind.HEMS, StepKind.CUFF_JOIN),
                Tell.said("strap-ends.do", Words.allowance(seams.first())).and(Words.pinsOut(tool)),
                Tell.said("strap-ends.check"));
    }

    private Step elastic(Notion strap) {
        Tool tool = kit.tack();
        double sewn = 2.0 * strap.count() * 2 * strap.width();
        return Step.sewn(
                StepKind.STRAP_ENDS,
                tool,
                Step.LAPPED,
                List.of(new Joined(strap.piece(), strap.edge())),
                sewn,
                Pace.flatSeam(tool.stitch(), sewn, 2 * strap.count()).plus(Work.handling(2 * strap.count() * TURN)),
                Set.of(StepKind.HEMS, StepKind.CUFF_JOIN),
                Tell.said(
                        "strap-ends.do-elastic",
                        Part.count(strap.count()),
                        Tell.mm(strap.width()),
                        Tell.mm(strap.cut()),
                        Tell.mm(strap.ends()),
                        Tell.mm(strap.lap()),
                        Tell.mm(strap.free())),
                Tell.said("strap-ends.check-elastic"));
    }
}
