package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.BadInput;
import stretchwright.ground.Voice;
import stretchwright.pattern.Machine;

/** Steps of the sewer's own among those of the pattern. */
class ExtrasTest {
    private static SewingTerms.Extra extra(String name, List<String> after, List<String> before) {
        return new SewingTerms.Extra(name, Place.HAND, 2, "", after, before);
    }

    private static SewingPlan plan(SewingTerms.Extra... extras) {
        SewingTerms terms = new SewingTerms(
                Set.of(Machine.OVERLOCKER),
                SewingTerms.CONVERSION,
                SewingTerms.CONE,
                SewingTerms.SPOOL,
                1,
                1,
                List.of(extras),
                Map.of());
        return Planning.plan(SampleSewing.withCuff(), SampleFabric.heavyKnit(), terms, List.of());
    }

    private static SewingPlan.Operation step(SewingPlan plan, StepName name) {
        return plan.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Also where the other one stands further down in the make file. */
    @Test
    void oneStepOfTheirOwnMayWaitForAnother() {
        SewingPlan plan = plan(
                extra("cut the tape", List.of(), List.of("sew the tape")), extra("sew the tape", List.of(), List.of()));
        int cut = step(plan, new StepName.Own("cut the tape")).step();
        assertThat(step(plan, new StepName.Own("sew the tape")).after()).containsExactly(cut);
    }

    /** A name that begins like one of the plan's steps is still the sewer's own: nothing is known of it. */
    @Test
    void anOwnStepIsNotTakenForAnotherByItsWords() {
        SewingPlan plan = plan(extra("test the iron", List.of("inseams"), List.of()));
        SewingPlan.Operation own = step(plan, new StepName.Own("test the iron"));
        assertThat(own.help().mistake().isNothing()).isTrue();
        assertThat(own.help().why()).isEmpty();
        assertThat(own.after()).containsExactly(step(plan, StepKind.INSEAMS).step());
    }

    @Test
    void aRingOfWaitingIsToldInTheSameWordsEveryTime() {
        BadInput bad = org.assertj.core.api.Assertions.catchThrowableOfType(
                BadInput.class, () -> plan(extra("a", List.of("try on"), List.of("front rise", "back rise"))));
        assertThat(bad.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.problem())
                        .isEqualTo("The steps wait for each other: inseams, then crotch bar, then press and cool, then"
                                + " try on, then a, then front rise, then the first again."));
    }

    @Test
    void whatTheSewerWroteStaysAsItIs() {
        SewingTerms.Extra tape =
                new SewingTerms.Extra("tape", Place.TABLE, 2, "Sew {0} 10 mm '% in.", List.of(), List.of());
        assertThat(Voice.of(stretchwright.ground.Unit.IN)
                        .say(step(plan(tape), new StepName.Own("tape")).instruction()))
                .isEqualTo("Sew {0} 10 mm '% in.");
    }
}
