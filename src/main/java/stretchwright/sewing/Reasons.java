package stretchwright.sewing;

import java.util.List;
import java.util.function.Predicate;

/** Why one step must come before another; the first rule that holds answers. */
final class Reasons {
    private static final List<Rule> RULES = List.of(
            rule(any(), named("test "), "a stitch is tried on a scrap first: a scrap is cheaper than a leg"),
            rule(is(FinishSteps.PRESS), any(), "heat once, at the end, over finished seams"),
            rule(is(FinishSteps.TRY_ON), any(), "the cloth must be cool and every seam sewn"),
            rule(any(), in(PartSteps.ON_THE_FLAT_LEG), "a pocket is sewn on while the leg lies flat"),
            rule(any(), is(TopSteps.DARTS), "a dart is sewn while the leg is flat"),
            rule(is(LegSteps.ROW), any(), "the row lies on the finished seam, and only now does that lie flat"),
            rule(is(PartSteps.GUSSET), any(), "the gusset is set into the gap that the rises leave"),
            rule(is(LegSteps.INSEAMS), is(PartSteps.GUSSET), "the inseam ends at the gusset's tip"),
            rule(is(LegSteps.INSEAMS), is(LegSteps.ROW), "once the inner leg is closed the rises no longer lie flat"),
            rule(is(LegSteps.INSEAMS), any(), "the inseam runs over finished seams in one go"),
            rule(is(LegSteps.BAR), any(), "it crosses the finished seam"),
            rule(is(LegSteps.FRONT, LegSteps.BACK), any(), "a leg must be whole before two are joined"),
            rule(any(), is(TopSteps.ELASTIC), "the elastic is closed to a ring before it is laid in"),
            rule(any(), is(TopSteps.EYELETS), "the holes are made in one layer, before the band is folded"),
            rule(is(TopSteps.CORD), any(), "the channel must be there before the cord goes in"),
            rule(any(), is(TopSteps.POCKET_HEM), "the pocket's opening is finished before its sides"),
            rule(any(), is(TopSteps.POCKET), "the pocket's sides are sewn while the band is flat"),
            rule(is(TopSteps.TOP), any(), "ring is sewn to ring"),
            rule(is(TopSteps.ROW), any(), "the row goes through the folded band"),
            rule(is(TopSteps.CASING), any(), "the casing is turned over a closed top edge"),
            rule(named("join the "), is(PartSteps.TAILBONE), "the seam catches the pouch's upper edge"),
            rule(named("join the "), named("fold and mark"), "quarters are set on quarters"),
            rule(named("join the "), named("turn and mark"), "quarters are set on quarters"),
            rule(named("join the "), named("mark the "), "quarters are set on quarters"),
            rule(named("fold and mark"), any(), "the quarters are measured from the ring's seam"),
            rule(named("turn and mark"), any(), "the quarters are measured from the rings' seams"),
            rule(named("mark the "), any(), "only now is the edge closed to a ring"),
            rule(is(LowerSteps.COVER_JOIN), any(), "ring is sewn to ring"),
            rule(is(FinishSteps.HEM), is(LowerSteps.COVER_JOIN), "the cover's own edge is turned last"),
            rule(
                    is(FinishSteps.HEM),
                    any(),
                    "sewn in the round the hem closes on itself, and no seam end lies open at the boot"),
            rule(is(LowerSteps.STRAP_ENDS), is(LowerSteps.STRAP_EDGES), "a strap is closed before its ends are caught"),
            rule(is(LowerSteps.STRAP_ENDS), any(), "the strap's ends are caught on a finished edge"));

    private record Rule(Predicate<String> step, Predicate<String> before, String because) {}

    private Reasons() {}

    /** Empty only for steps of the sewer's own. */
    static String why(String step, String before) {
        return RULES.stream()
                .filter(r -> r.step.test(step) && r.before.test(before))
                .findFirst()
                .map(Rule::because)
                .orElse("");
    }

    private static Rule rule(Predicate<String> step, Predicate<String> before, String because) {
        return new Rule(step, before, because);
    }

    private static Predicate<String> any() {
        return name -> true;
    }

    private static Predicate<String> is(String... names) {
        return List.of(names)::contains;
    }

    private static Predicate<String> in(java.util.Set<String> names) {
        return names::contains;
    }

    private static Predicate<String> named(String start) {
        return name -> name.startsWith(start);
    }
}
