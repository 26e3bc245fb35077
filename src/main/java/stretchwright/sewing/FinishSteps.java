package stretchwright.sewing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Stitch;

/** What stands at the two ends of the work: the tests on scraps, the plain hem, pressing and trying on. */
record FinishSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final String HEM = "hems";
    static final String PRESS = "press and cool";
    static final String TRY_ON = "try on";

    /** A scrap seam in each direction, mm (makers-troubles story S4 asks for both directions). */
    static final double SCRAP = 100;

    /** Test seams are pulled to one and a half at least (makers-troubles story S4). */
    private static final double USUAL_PULL = 0.5;

    static String testOf(Tool tool) {
        return "test " + tool.stitch().plainName();
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
        double stands = tool.stitch().extensibility();
        double pull = Math.max(
                Math.min(USUAL_PULL, stands), worst.map(w -> upTo5(w.needed())).orElse(0.0));
        String needle = first ? " with a new " + Settings.needle(fabric) : "";
        String unplug = tool.byHand() ? "" : " Unplug the machine whenever you thread it or change a needle.";
        return Step.sewn(
                testOf(tool),
                tool,
                tool.equals(kit.hem()) && !tool.equals(kit.seam()) ? Step.TURNED_HEM : Step.SUPERIMPOSED,
                List.of(),
                2 * SCRAP,
                Work.handling(Pace.TEST),
                Set.of(),
                "On two layers of scrap from the same cloth sew " + Words.mm(SCRAP) + " across the cloth and "
                        + Words.mm(SCRAP) + " along it" + needle
                        + "; let it run over four layers at one place, as at the crotch." + adjusting(tool) + unplug,
                "Pull each test seam from " + Words.mm(SCRAP) + " to " + Words.mm(SCRAP * (1 + pull))
                        + worst.map(w -> asked(w, stands)).orElse("")
                        + ": no thread snaps and the seam lies flat again."
                        + (tool.byHand() ? "" : " No stitch is skipped. Write the settings down."));
    }

    /** A share, rounded up to whole 5 mm of the test seam. */
    private static double upTo5(double needed) {
        return Math.ceil(needed * SCRAP / 5 - 1e-9) * 5 / SCRAP;
    }

    private static String asked(SeamStrain worst, double stands) {
        String most = " (the " + worst.seam() + " is drawn by " + Words.percent(worst.needed()) + " at most: "
                + worst.pose() + ")";
        return worst.needed() <= stands
                ? most
                : most + ", more than the " + Words.percent(stands) + " that this stitch is known to stand";
    }

    /** What to turn when the test is not good; where to begin stands in the step's setting. */
    private static String adjusting(Tool tool) {
        return switch (tool.stitch()) {
            case OVERLOCK_3, OVERLOCK_4 ->
                " If the seam waves, raise the differential feed; if it gathers, lower it. Keep your fingers away from"
                        + " knife and needle.";
            case COVERSTITCH ->
                " If a ridge stands up between the rows, loosen the looper one small step and try again.";
            case ZIGZAG -> " If a thread snaps, take a wider or a shorter zigzag.";
            case CHAINSTITCH, LOCKSTITCH -> " If a thread snaps, take a shorter stitch and a looser thread.";
            case BACKSTITCH_BY_HAND -> " Stretch the cloth a little as you sew.";
        };
    }

    List<Step> hems() {
        return SeamGroup.of(pattern, Seam.Role.HEM).stream().map(this::hem).toList();
    }

    /** After the inseam: in the round the row closes on itself, and no seam end lies open at the boot. */
    private Step hem(SeamGroup hem) {
        Tool tool = kit.hem();
        String how = tool.stitch() == Stitch.COVERSTITCH
                ? "Coverstitch once round from the outside, so that the threads underneath cover the raw edge."
                : "Sew once round over the raw edge, from the inside.";
        String elastic = LowerSteps.notion(pattern, "sole elastic")
                .map(FinishSteps::gathered)
                .orElse("");
        return Step.sewn(
                HEM,
                tool,
                Step.TURNED_HEM,
                hem.places(pattern),
                hem.length(),
                Pace.ringSeam(tool.stitch(), hem.length(), hem.times()),
                Set.of(LegSteps.SIDE, PartSteps.PANELS, LegSteps.INSEAMS, LowerSteps.COVER_JOIN),
                "Now that " + (elastic.isEmpty() ? "the inner leg is" : "the covers are") + " closed, turn "
                        + Words.allowance(hem.first())
                        + " of the lower edge to the inside, all round. " + sloping(hem) + elastic + how
                        + " Overlap the ends by 20 mm at " + (elastic.isEmpty() ? "the inseam" : "the back seam")
                        + ", so that no seam end lies open."
                        + pinsOut(tool) + Words.limitAround(tool, fabric),
                "The raw edge is caught all round, the hem lies without waves and still passes the heel.");
    }

    private static String gathered(Notion elastic) {
        return "Cut " + elastic.count() + " lengths of elastic " + Words.mm(elastic.width()) + " wide, "
                + Words.mm(elastic.cut()) + " long, overlap each by " + Words.mm(elastic.ends())
                + " to a ring, lay it into the turned edge and stretch it evenly between the quarters as you sew; do not"
                + " sew into it. ";
    }

    /** An edge that slopes is curved: only a narrow turn lies flat on it. */
    private String sloping(SeamGroup hem) {
        boolean curved = hem.seams().stream()
                .flatMap(s -> s.sides().stream())
                .map(side -> pattern.piece(side.piece()).edge(side.edge()).line())
                .anyMatch(line -> line.points().size() > 2);
        return curved
                ? "The edge is curved: ease it over as you turn it, stretching where it is hollow, and baste it first. "
                : "";
    }

    private static String pinsOut(Tool tool) {
        return tool.byHand() ? "" : " Take pins out before they reach the needle.";
    }

    /** The steps that no other sewing step waits for: when they are done, all is. */
    private static Set<String> endsOf(List<Step> sewing) {
        Set<String> ends = new LinkedHashSet<>();
        sewing.forEach(step -> ends.add(step.name()));
        sewing.forEach(step -> ends.removeAll(step.after()));
        return ends;
    }

    List<Step> last(List<Step> sewing) {
        Set<String> ends = endsOf(sewing);
        Step press = Step.unsewn(
                PRESS,
                "iron",
                List.of(),
                Pace.PRESS,
                ends,
                "Lay every seam flat and press it through a thin cloth with the iron at 110 C or less, without steam;"
                        + " set the iron down and lift it, do not push it. Let the pair cool flat before you move it.",
                "The cloth does not shine and the seams lie flat when cool.");
        Step tryOn = Step.unsewn(
                TRY_ON,
                "hand",
                List.of(),
                Pace.TRY_ON,
                Set.of(PRESS),
                "Put the pair on and squat, sit and lunge ten times. Take it off at once if a foot or leg turns numb,"
                        + " cold or blue." + boot() + open(),
                "The upper edge drops less than 15 mm, the lower edges rise less than 20 mm, no thread snaps, and no"
                        + " cloth hangs loose.");
        return List.of(press, tryOn);
    }

    private static String boot() {
        return " Over a skate, the lower edge must end above the blade or the wheels.";
    }

    private String open() {
        String top = SeamGroup.of(pattern, Seam.Role.WAISTBAND_JOIN).isEmpty()
                        && SeamGroup.of(pattern, Seam.Role.CASING).isEmpty()
                ? " The top edge is left as it was cut: this pattern has no waistband."
                : "";
        boolean finished = SeamGroup.of(pattern, Seam.Role.CUFF_JOIN).isPresent()
                || SeamGroup.of(pattern, Seam.Role.HEM).isPresent();
        return top + (finished ? "" : " The lower edges are left as they were cut: this pattern has no cuff or hem.");
    }
}
