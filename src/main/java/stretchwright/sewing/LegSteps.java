package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** The seams that turn flat legs into a pair: side seams where there are any, rises, inseams, the crotch bar. */
record LegSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final String SIDE = "side seams";
    static final String FRONT = "front rise";
    static final String BACK = "back rise";
    static final String ROW = "cover the rises";
    static final String INSEAMS = "inseams";
    static final String BAR = "crotch bar";

    /** To each side of the crotch; makers use 25 to 50 mm (trade-values section 4.3, common practice). */
    static final double BAR_EACH_WAY = 40;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.SIDE_SEAM).ifPresent(seams -> steps.add(side(seams)));
        Optional<SeamGroup> front = SeamGroup.of(pattern, Seam.Role.FRONT_RISE);
        Optional<SeamGroup> back = SeamGroup.of(pattern, Seam.Role.BACK_RISE);
        front.ifPresent(seams -> steps.add(rise(FRONT, seams)));
        back.ifPresent(seams -> steps.add(rise(BACK, seams)));
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
                SIDE,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                PartSteps.ON_THE_FLAT_LEG,
                "Lay front and back leg right sides together (the outsides of the cloth facing) and sew "
                        + Words.edges(seams.first()) + " of each leg." + Words.notches(pattern, seams.first())
                        + Words.sewLine(seams.first())
                        + Words.pins(tool) + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, seams.first()) + " The seam allowance is on the inside of the leg.");
    }

    private Step rise(String name, SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                name,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                PartSteps.BEFORE_THE_RISES,
                "Lay the left and the right leg right sides together (the outsides of the cloth facing), "
                        + Words.edges(seams.first()) + " level, and sew from the waist to "
                        + (gusset() ? "the end of the edge, where the gusset begins." : "the crotch.")
                        + Words.notches(pattern, seams.first()) + Words.sewLine(seams.first()) + Words.pins(tool)
                        + Words.limitAlong(tool, fabric)
                        + (name.equals(BACK) ? spared() : ""),
                Words.lengths(pattern, seams.first())
                        + " Opened out, the seam lies without waves and its allowance is on the" + " inside.");
    }

    private String spared() {
        return kit.sparesTheRow()
                ? " A row of coverstitch on top is left out: it would mean converting the machine twice."
                : "";
    }

    private Optional<Step> row(Tool tool, Optional<SeamGroup> front, Optional<SeamGroup> back) {
        List<SeamGroup> rises = Stream.concat(front.stream(), back.stream()).toList();
        if (rises.isEmpty()) {
            return Optional.empty();
        }
        double length = rises.stream().mapToDouble(SeamGroup::length).sum();
        int times = rises.stream().mapToInt(SeamGroup::times).sum();
        return Optional.of(Step.sewn(
                ROW,
                tool,
                Step.SUPERIMPOSED,
                rises.stream().flatMap(r -> r.joins().stream()).toList(),
                length,
                Pace.row(tool.stitch(), length, times),
                Set.of(FRONT, BACK),
                "Open the legs out flat, outside up, with the allowance underneath laid to one side: the front one to"
                        + " the wearer's left, the back one to the right. Coverstitch over each seam from waist to "
                        + (gusset() ? "gusset" : "crotch")
                        + ", one needle on each side of the seam line.",
                "The seam line runs midway between the two rows and the allowance is caught flat all the way."));
    }

    private Step inseams(SeamGroup seams, boolean rises) {
        Tool tool = kit.seam();
        String inOneGo = rises && seams.times() == 2 && !gusset()
                ? " Sew both legs in one go: from one lower edge up to the crotch, where the front and back seams meet,"
                        + " and down to the other lower edge; at the crotch turn the two allowances opposite ways."
                : " Sew each leg from the lower edge to the "
                        + (gusset() ? "gusset's tip, and stop on the seam line." : "crotch.");
        return Step.sewn(
                INSEAMS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(SIDE, PartSteps.PANELS, FRONT, BACK, ROW, PartSteps.GUSSET),
                "Fold each leg right sides together so that " + Words.edges(seams.first()) + " meet on the inner leg."
                        + Words.notches(pattern, seams.first()) + Words.sewLine(seams.first()) + inOneGo
                        + Words.pins(tool)
                        + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, seams.first())
                        + " Neither leg twists when it hangs, and "
                        + (gusset()
                                ? "at the gusset's two inner tips nothing is caught in a fold."
                                : "at the crotch the seams meet in one point."));
    }

    private static String slowly(Tool tool) {
        return tool.byHand() ? "" : " Go slowly over the crossing; where it is thick, turn the wheel by hand.";
    }

    private Step bar(SeamGroup seams) {
        Tool tool = kit.bar();
        double eachWay = Math.min(BAR_EACH_WAY, seams.length() / 2);
        String how = tool.hasKnife()
                ? "Unplug the machine and take the knife out of work; then sew once more over the inseam"
                : "Sew a second row over the inseam" + (tool.byHand() ? "" : ", outside of the cloth up,");
        String then = tool.hasKnife() ? " Put the knife back to work afterwards." : "";
        return Step.sewn(
                BAR,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                2 * eachWay,
                Pace.row(tool.stitch(), 2 * eachWay, 1).plus(Work.handling(tool.hasKnife() ? Pace.KNIFE : 0)),
                Set.of(INSEAMS),
                how + " where it crosses the crotch, from " + Words.mm(eachWay) + " before the crossing to "
                        + Words.mm(eachWay) + " beyond it." + slowly(tool) + then + Words.limitAlong(tool, fabric),
                "Pull the crossing hard both ways: no thread snaps and no gap shows.");
    }
}
