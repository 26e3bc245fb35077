package stretchwright.sewing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Stitch;

/** What stands at the two ends of the work: the tests on scraps, the plain hem, pressing and trying on. */
record FinishSteps(Pattern pattern, Fabric fabric, Kit kit) {
    /** A scrap seam in each direction, mm (makers-troubles story S4 asks for both directions). */
    static final double SCRAP = 100;

    /** Test seams are pulled to one and a half at least (makers-troubles story S4). */
    private static final double USUAL_PULL = 0.5;

    /** How far the row runs over its own beginning, mm; common practice, no source. */
    private static final double OVERLAP = 20;

    static StepName testOf(Tool tool) {
        return new StepName.Test(tool.stitch());
    }

    /** One test for each stitch that the steps use, in the order of first use. */
    List<Step> tests(List<Step> steps, Demands demands) {
        Set<Tool> tools =
                steps.stream().flatMap(s -> s.tool().stream()).collect(Collectors.toCollection(LinkedHashSet::new));
        List<Step> tests = new ArrayList<>();
        for (Tool tool : tools) {
            tests.add(test(tool, tests.isEmpty(), demands.of(tool.stitch(), steps)));
        }
        return tests;
    }

    private Step test(Tool tool, boolean first, Optional<SeamStrain> worst) {
        Said sewn = first
                ? Tell.said("test.do-new-needle", Tell.mm(SCRAP), Settings.needle(fabric))
                : Tell.said("test.do", Tell.mm(SCRAP));
        return Step.sewn(
                testOf(tool),
                tool,
                tool.equals(kit.hem()) && !tool.equals(kit.seam()) ? Step.TURNED_HEM : Step.SUPERIMPOSED,
                List.of(),
                2 * SCRAP,
                Work.handling(Pace.TEST),
                Set.of(),
                sewn.and(adjusting(tool)).and(tool.byHand() ? Said.NOTHING : Tell.said("test.unplug")),
                pulled(tool.stitch(), worst).and(tool.byHand() ? Said.NOTHING : Tell.said("test.write-down")));
    }

    /** A share, rounded up to whole 5 mm of the test seam. */
    private static double upTo5(double needed) {
        return Math.ceil(needed * SCRAP / 5 - 1e-9) * 5 / SCRAP;
    }

    private static Said pulled(Stitch stitch, Optional<SeamStrain> worst) {
        double stands = stitch.extensibility();
        double pull = Math.max(
                Math.min(USUAL_PULL, stands), worst.map(w -> upTo5(w.needed())).orElse(0.0));
        Part from = Tell.mm(SCRAP);
        Part to = Tell.mm(SCRAP * (1 + pull));
        if (worst.isEmpty()) {
            return Tell.said("test.pull", from, to);
        }
        SeamStrain w = worst.get();
        Part seam = w.seam().said();
        Part drawn = Part.share(w.needed());
        return w.needed() <= stands
                ? Tell.said("test.pull-drawn", from, to, seam, drawn, w.pose())
                : Tell.said("test.pull-too-far", from, to, seam, drawn, w.pose(), Part.share(stands));
    }

    /** What to turn when the test is not good; where to begin stands in the step's setting. */
    private static Said adjusting(Tool tool) {
        return switch (tool.stitch()) {
            case OVERLOCK_3, OVERLOCK_4 -> Tell.said("test.adjust-overlock");
            case COVERSTITCH -> Tell.said("test.adjust-cover");
            case ZIGZAG -> Tell.said("test.adjust-zigzag");
            case CHAINSTITCH, LOCKSTITCH -> Tell.said("test.adjust-straight");
            case BACKSTITCH_BY_HAND -> Tell.said("test.adjust-hand");
        };
    }

    List<Step> hems() {
        return SeamGroup.of(pattern, Seam.Role.HEM).stream().map(this::hem).toList();
    }

    /** After the inseam: in the round the row closes on itself, and no seam end lies open at the boot. */
    private Step hem(SeamGroup hem) {
        Tool tool = kit.hem();
        Optional<Notion> elastic = LowerSteps.notion(pattern, NotionName.SOLE_ELASTIC);
        return Step.sewn(
                StepKind.HEMS,
                tool,
                Step.TURNED_HEM,
                hem.places(pattern),
                hem.length(),
                Pace.ringSeam(tool.stitch(), hem.length(), hem.times()),
                Set.of(StepKind.SIDE_SEAMS, StepKind.PANELS, StepKind.INSEAMS, StepKind.COVER_JOIN),
                turned(hem, elastic.isPresent())
                        .and(curved(hem) ? Tell.said("hem.curved") : Said.NOTHING)
                        .and(elastic.map(FinishSteps::gathered).orElse(Said.NOTHING))
                        .and(tool.stitch() == Stitch.COVERSTITCH ? Tell.said("hem.cover") : Tell.said("hem.over-edge"))
                        .and(overlapped(elastic.isPresent()))
                        .and(Words.pinsOut(tool))
                        .and(Words.limitAround(tool, fabric)),
                Tell.said("hem.check"));
    }

    private static Said turned(SeamGroup hem, boolean ofCovers) {
        return ofCovers
                ? Tell.said("hem.turn-cover", Words.allowance(hem.first()))
                : Tell.said("hem.turn-leg", Words.allowance(hem.first()));
    }

    private static Said overlapped(boolean ofCovers) {
        return ofCovers
                ? Tell.said("hem.overlap-cover", Part.sewn(OVERLAP))
                : Tell.said("hem.overlap-leg", Part.sewn(OVERLAP));
    }

    private static Said gathered(Notion elastic) {
        return Tell.said(
                "hem.elastic",
                Part.count(elastic.count()),
                Tell.mm(elastic.width()),
                Tell.mm(elastic.cut()),
                Tell.mm(elastic.ends()));
    }

    /** An edge that slopes is curved: only a narrow turn lies flat on it. */
    private boolean curved(SeamGroup hem) {
        return hem.seams().stream()
                .flatMap(s -> s.sides().stream())
                .map(side -> pattern.piece(side.piece()).edge(side.edge()).line())
                .anyMatch(line -> line.points().size() > 2);
    }

    /** The steps that no other sewing step waits for: when they are done, all is. */
    private static Set<StepName> endsOf(List<Step> sewing) {
        Set<StepName> ends = new LinkedHashSet<>();
        sewing.forEach(step -> ends.add(step.name()));
        sewing.forEach(step -> ends.removeAll(step.after()));
        return ends;
    }

    List<Step> last(List<Step> sewing) {
        Step press = Step.unsewn(
                StepKind.PRESS,
                Place.IRON,
                List.of(),
                Pace.PRESS,
                endsOf(sewing),
                Tell.said("press.do"),
                Tell.said("press.check"));
        Step tryOn = Step.unsewn(
                StepKind.TRY_ON,
                Place.HAND,
                List.of(),
                Pace.TRY_ON,
                Set.of(StepKind.PRESS),
                Tell.said("try-on.do").and(open()),
                Tell.said("try-on.check", Part.sewn(15), Part.sewn(20)));
        return List.of(press, tryOn);
    }

    private Said open() {
        boolean closed = has(Seam.Role.WAISTBAND_JOIN) || has(Seam.Role.CASING);
        boolean finished = has(Seam.Role.CUFF_JOIN) || has(Seam.Role.HEM);
        return (closed ? Said.NOTHING : Tell.said("try-on.open-top"))
                .and(finished ? Said.NOTHING : Tell.said("try-on.open-below"));
    }

    private boolean has(Seam.Role role) {
        return SeamGroup.of(pattern, role).isPresent();
    }
}
