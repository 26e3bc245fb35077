package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** What is sewn below the legs beside cuffs and hems: boot covers, straps. Common practice, no source. */
record LowerSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final String COVERS = "close the boot covers";
    static final String COVER_JOIN = "join the boot covers";
    static final String STRAP_EDGES = "straps";
    static final String STRAP_ENDS = "sew on the straps";

    /** Minutes to turn a narrow tube right side out, or to fit a fastening at one end of an elastic. */
    static final double TURN = 1.5;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.COVER_SEAM).ifPresent(s -> steps.add(covers(s)));
        SeamGroup.of(pattern, Seam.Role.COVER_JOIN).ifPresent(s -> steps.add(joinCovers(s)));
        SeamGroup.of(pattern, Seam.Role.STRAP_EDGES).ifPresent(s -> steps.add(tubes(s)));
        SeamGroup.of(pattern, Seam.Role.STRAP_ENDS).ifPresent(s -> steps.add(ends(s)));
        notion(pattern, "strap").ifPresent(n -> steps.add(elastic(n)));
        return steps;
    }

    static Optional<Notion> notion(Pattern pattern, String name) {
        return pattern.notions().stream().filter(n -> n.name().equals(name)).findFirst();
    }

    private Step covers(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                COVERS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(),
                "Lay the two halves of each boot cover right sides together, one of them the mirror image of the other,"
                        + " and sew the front edges, then the back edges."
                        + Words.notches(pattern, seams.first()) + Words.sewLine(seams.first()) + Words.pins(tool)
                        + Words.limitAlong(tool, fabric),
                "Each cover is open above and below, and its front seam runs out into the toe without a corner.");
    }

    private Step joinCovers(SeamGroup join) {
        Tool tool = kit.seam();
        Seam.Side leg = join.first().sides().get(0);
        Seam.Side cover = join.first().sides().get(1);
        return Step.sewn(
                COVER_JOIN,
                tool,
                Step.SUPERIMPOSED,
                join.joins(),
                join.length(),
                Pace.ringSeam(tool.stitch(), join.length(), join.times()),
                Set.of(COVERS, LegSteps.SIDE, LegSteps.INSEAMS),
                "Slip a cover over each leg end, right sides together and raw edges level: its front seam on the notch"
                        + " \"instep\", its back seam on the notch \"heel\", its notches \"centre\" on the inseam and on"
                        + " the notch \"centre\"; sew once round."
                        + Words.stretch(cover, leg, "cover", "leg end") + Words.sewLine(join.first())
                        + Words.pins(tool) + Words.limitAround(tool, fabric),
                "The toes of both covers point forward, and the seam stretches over your hands without a snap.");
    }

    private Step tubes(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                STRAP_EDGES,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()).plus(Work.handling(seams.times() * TURN)),
                Set.of(),
                "Fold each strap along its length, right sides together, and sew " + Words.edges(seams.first())
                        + " to a tube; turn it right side out and lay the seam along one side."
                        + Words.sewLine(seams.first()) + Words.pins(tool) + Words.limitAround(tool, fabric),
                "The tube lies flat and is not twisted.");
    }

    private Step ends(SeamGroup seams) {
        Tool tool = kit.tack();
        return Step.sewn(
                STRAP_ENDS,
                tool,
                Step.LAPPED,
                seams.joins(),
                2 * seams.length(),
                Pace.flatSeam(tool.stitch(), 2 * seams.length(), seams.times()),
                Set.of(STRAP_EDGES, FinishSteps.HEM, "join the cuffs"),
                "Lay one end of each strap " + Words.allowance(seams.first()) + " deep on the inside of the finished"
                        + " lower edge, its middle on the inseam, the other end with its middle on the notch \"centre\";"
                        + " pin, try it on with the foot in it, then sew each end across twice."
                        + (tool.byHand() ? "" : " Take pins out before they reach the needle."),
                "The strap lies flat under the arch, neither twisted nor so tight that it pulls the hem down.");
    }

    private Step elastic(Notion strap) {
        Tool tool = kit.tack();
        double sewn = 2.0 * strap.count() * 2 * strap.width();
        return Step.sewn(
                STRAP_ENDS,
                tool,
                Step.LAPPED,
                List.of(strap.piece() + ": " + strap.edge()),
                sewn,
                Pace.flatSeam(tool.stitch(), sewn, 2 * strap.count()).plus(Work.handling(2 * strap.count() * TURN)),
                Set.of(FinishSteps.HEM, "join the cuffs"),
                "Cut " + strap.count() + " lengths of firm elastic " + Words.mm(strap.width()) + " wide, "
                        + Words.mm(strap.cut()) + " long. Turn " + Words.mm(strap.ends())
                        + " at each end and sew hook tape or"
                        + " snaps through both layers; sew the other halves to the inside of the lower edge, at the inseam"
                        + " and at the notch \"centre\" opposite. Sew every end across twice, close together.",
                "The strap comes off with one hand, nothing hangs when it is closed, and it lies in the gap between the"
                        + " mounts: never under the heel block or across the blade.");
    }
}
