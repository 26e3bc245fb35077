package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.intake.Nearest;
import stretchwright.intake.Opposites;
import stretchwright.intake.WearingSymptom;

/**
 * Symptoms that may have been meant: those that share most words with what was typed, whatever their order; else the one
 * nearest by letters. Never one that says the opposite.
 */
final class Near {
    /** More would be a list and no question. */
    private static final int MOST = 3;

    /** Of the words of both together at least half. */
    private static final double ENOUGH = 0.5;

    private static final Set<String> LITTLE = Set.of(
            "the", "a", "an", "is", "are", "at", "of", "in", "on", "to", "or", "too", "very", "when", "my", "it");

    private Near() {}

    static List<WearingSymptom> to(String typed) {
        List<WearingSymptom> best = new ArrayList<>();
        double most = ENOUGH;
        for (WearingSymptom symptom : WearingSymptom.values()) {
            boolean other = Opposites.are(typed, symptom.word()) || Opposites.differ(typed, symptom.word());
            double share = other ? 0 : shared(telling(typed), telling(symptom.word()));
            if (share > most) {
                best.clear();
            }
            if (share >= most) {
                most = share;
                best.add(symptom);
            }
        }
        return best.isEmpty() || best.size() > MOST ? byLetters(typed).stream().toList() : best;
    }

    private static Optional<WearingSymptom> byLetters(String typed) {
        List<String> alike = WearingSymptom.names().stream()
                .filter(name -> !Opposites.differ(typed, name))
                .toList();
        return Nearest.to(typed, alike).flatMap(WearingSymptom::of);
    }

    /** Without the words that every sentence has. */
    private static List<String> telling(String text) {
        return Opposites.words(text).stream().filter(w -> !LITTLE.contains(w)).toList();
    }

    private static double shared(List<String> typed, List<String> known) {
        long found = typed.stream()
                .filter(w -> known.stream().anyMatch(k -> Opposites.same(w, k)))
                .count();
        return typed.isEmpty() ? 0 : 2.0 * Math.min(found, known.size()) / (typed.size() + known.size());
    }
}
