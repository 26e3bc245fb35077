package stretchwright.wearing;

import java.util.Arrays;
import java.util.List;
import stretchwright.ground.Said;
import stretchwright.intake.WearingKey;

/**
 * What makers do against a symptom.
 *
 * @param why the likely cause and what else to do
 * @param ways what to change in the make, the usual first; a later one where a make cannot take it. Empty where the cure
 *     is in cloth, cutting or sewing
 */
record Cure(Said why, List<List<Step>> ways) {

    /**
     * @param by first and every further step, mm; 1 for a choice
     * @param limit all steps together
     */
    record Step(WearingKey key, double by, double limit) {}

    Cure {
        ways = ways.stream().map(List::copyOf).toList();
    }

    static Cure of(Said why, Step... steps) {
        return new Cure(why, steps.length == 0 ? List.of() : List.of(List.of(steps)));
    }

    /** The same, and another way where the make cannot take this one. */
    Cure or(Step... steps) {
        List<List<Step>> all = new java.util.ArrayList<>(ways);
        all.add(Arrays.asList(steps));
        return new Cure(why, all);
    }

    static Step step(WearingKey key, double by, double limit) {
        return new Step(key, by, limit);
    }

    static Step choice(WearingKey key) {
        return new Step(key, 1, 1);
    }
}
