package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something that a worn garment does, and what makers change then.
 *
 * @param name in plain words; typed and written to the make file
 * @param question the one that tells two opposite cures apart; empty where there is one cure
 * @param cure the only one, or that for yes
 * @param ifNo the one for no; the same where nothing is asked
 */
public record WearingSymptom(String name, String question, Cure cure, Cure ifNo) {

    /**
     * @param why the likely cause and what else to do
     * @param steps what to change in the style; empty where the cure is in cloth, cutting or sewing
     */
    public record Cure(String why, List<Step> steps) {
        public Cure {
            steps = List.copyOf(steps);
        }
    }

    /**
     * @param by first and every further step, mm; 1 for a choice
     * @param limit all steps together
     */
    public record Step(WearingKey key, double by, double limit) {}

    static WearingSymptom one(String name, String why, Step... steps) {
        Cure cure = new Cure(why, List.of(steps));
        return new WearingSymptom(name, "", cure, cure);
    }

    static Step step(WearingKey key, double by, double limit) {
        return new Step(key, by, limit);
    }

    static Step choice(WearingKey key) {
        return new Step(key, 1, 1);
    }

    public boolean asks() {
        return !question.isEmpty();
    }

    public Cure cure(String answer) {
        return answer.equals("no") ? ifNo : cure;
    }

    static List<WearingSymptom> all() {
        return Stream.of(WearingTop.WAIST, WearingTop.RISE, WearingLeg.LEG, WearingLeg.HEM)
                .flatMap(List::stream)
                .toList();
    }

    /** As they are typed. */
    public static List<String> names() {
        return all().stream().map(WearingSymptom::name).toList();
    }

    /** "Is ... meant?", or where the list is. */
    public static String nearest(String words) {
        return Nearest.to(words, names())
                .map(n -> "Is \"" + n + "\" meant?")
                .orElse("The command after, with the make file alone, lists them.");
    }

    public static Optional<WearingSymptom> of(String name) {
        String plain = name.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("\\s+", " ");
        return all().stream().filter(s -> s.name.equals(plain)).findFirst();
    }
}
