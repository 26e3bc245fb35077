package stretchwright.sewing;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import stretchwright.ground.Said;

/** Why one step must come before another; the first rule that holds answers. */
final class Reasons {
    private static final List<Rule> RULES = List.of(
            rule(any(), test(), Tell.said("why.test")),
            rule(is(StepKind.PRESS), any(), Tell.said("why.press")),
            rule(is(StepKind.TRY_ON), any(), Tell.said("why.try-on")),
            rule(any(), in(PartSteps.ON_THE_FLAT_LEG), Tell.said("why.pocket-on-leg")),
            rule(any(), is(StepKind.DARTS), Tell.said("why.darts")),
            rule(is(StepKind.ROW_OVER_RISES), any(), Tell.said("why.row-over-rises")),
            rule(is(StepKind.GUSSET), any(), Tell.said("why.gusset")),
            rule(is(StepKind.INSEAMS), is(StepKind.GUSSET), Tell.said("why.inseam-gusset")),
            rule(is(StepKind.INSEAMS), is(StepKind.ROW_OVER_RISES), Tell.said("why.inseam-row")),
            rule(is(StepKind.INSEAMS), any(), Tell.said("why.inseam")),
            rule(is(StepKind.CROTCH_BAR), any(), Tell.said("why.bar")),
            rule(is(StepKind.FRONT_RISE, StepKind.BACK_RISE), any(), Tell.said("why.rise")),
            rule(any(), is(StepKind.ELASTIC), Tell.said("why.elastic")),
            rule(any(), is(StepKind.EYELETS), Tell.said("why.eyelets")),
            rule(is(StepKind.CORD), any(), Tell.said("why.cord")),
            rule(any(), is(StepKind.KEY_POCKET_HEM), Tell.said("why.pocket-hem")),
            rule(any(), is(StepKind.KEY_POCKET), Tell.said("why.pocket-on-band")),
            rule(is(StepKind.BAND_TOP), any(), Tell.said("why.rings")),
            rule(is(StepKind.BAND_ROW), any(), Tell.said("why.band-row")),
            rule(is(StepKind.CASING), any(), Tell.said("why.casing")),
            rule(is(StepKind.BAND_JOIN), is(StepKind.TAILBONE_POCKET), Tell.said("why.pouch")),
            rule(
                    is(StepKind.BAND_JOIN, StepKind.CUFF_JOIN),
                    is(
                            StepKind.BAND_FOLD,
                            StepKind.CUFF_FOLD,
                            StepKind.BAND_TURN,
                            StepKind.LEG_TOP_MARKS,
                            StepKind.LEG_END_MARKS),
                    Tell.said("why.quarters")),
            rule(is(StepKind.BAND_FOLD, StepKind.CUFF_FOLD), any(), Tell.said("why.fold")),
            rule(is(StepKind.BAND_TURN), any(), Tell.said("why.turn")),
            rule(is(StepKind.LEG_TOP_MARKS, StepKind.LEG_END_MARKS), any(), Tell.said("why.marks")),
            rule(is(StepKind.COVER_JOIN), any(), Tell.said("why.rings")),
            rule(is(StepKind.HEMS), is(StepKind.COVER_JOIN), Tell.said("why.cover-hem")),
            rule(is(StepKind.HEMS), any(), Tell.said("why.hem")),
            rule(is(StepKind.STRAP_ENDS), is(StepKind.STRAP_EDGES), Tell.said("why.strap-edges")),
            rule(is(StepKind.STRAP_ENDS), any(), Tell.said("why.strap-ends")));

    private record Rule(Predicate<StepName> step, Predicate<StepName> before, Said because) {}

    private Reasons() {}

    /** Nothing only for steps of the sewer's own. */
    static Said why(StepName step, StepName before) {
        return RULES.stream()
                .filter(r -> r.step.test(step) && r.before.test(before))
                .findFirst()
                .map(Rule::because)
                .orElse(Said.NOTHING);
    }

    private static Rule rule(Predicate<StepName> step, Predicate<StepName> before, Said because) {
        return new Rule(step, before, because);
    }

    private static Predicate<StepName> any() {
        return name -> true;
    }

    private static Predicate<StepName> is(StepName... names) {
        return List.of(names)::contains;
    }

    private static Predicate<StepName> in(Set<StepName> names) {
        return names::contains;
    }

    private static Predicate<StepName> test() {
        return name -> name instanceof StepName.Test;
    }
}
