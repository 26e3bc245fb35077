package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.ground.RandomStream;

/** Fits on four fifths of the survey rows and predicts the fifth, five times over. */
final class Folds {
    static final int FOLDS = 5;

    private Folds() {}

    /** Predictions of one measure: how far the truth lay from them, mm, and in stated spreads. */
    static final class Errors {
        private final List<Double> mm = new ArrayList<>();
        private final List<Double> spreads = new ArrayList<>();

        void add(double truth, double expectedLog, double spread) {
            mm.add(truth - Math.exp(expectedLog));
            spreads.add((Math.log(truth) - expectedLog) / spread);
        }

        int count() {
            return mm.size();
        }

        double bias() {
            return mm.stream().mapToDouble(d -> d).average().orElse(Double.NaN);
        }

        double sd() {
            double bias = bias();
            return Math.sqrt(
                    mm.stream().mapToDouble(d -> (d - bias) * (d - bias)).sum() / (mm.size() - 1));
        }

        /** Share within the nominal 90 % interval. */
        double covered() {
            return spreads.stream().filter(z -> Math.abs(z) <= 1.6449).count() / (double) spreads.size();
        }

        void addAll(Errors other) {
            mm.addAll(other.mm);
            spreads.addAll(other.spreads);
        }
    }

    static Survey[] fits(Figure figure, FitBodies.Surveys surveys) {
        Survey[] fits = new Survey[FOLDS];
        for (int fold = 0; fold < FOLDS; fold++) {
            fits[fold] = FitBodies.survey(figure, surveys.fold(fold, FOLDS, false));
        }
        return fits;
    }

    /** Errors by measure when exactly the given measures are known. */
    static Map<Measure, Errors> given(
            Set<Measure> given, SurveyRows.Group group, FitBodies.Surveys surveys, Survey[] fits) {
        Map<Measure, Errors> errors = new EnumMap<>(Measure.class);
        for (int fold = 0; fold < FOLDS; fold++) {
            for (SurveyRows.Person person : SurveyRows.people(group, surveys.fold(fold, FOLDS, true))) {
                if (person.mm().keySet().containsAll(given)) {
                    predict(person, given, fits[fold], errors);
                }
            }
        }
        return errors;
    }

    /** Errors by measure when so many measures, another choice for each person, are known. */
    static Map<Measure, Errors> anyGiven(
            int count, SurveyRows.Group group, Set<Measure> never, FitBodies.Surveys surveys, Survey[] fits) {
        Map<Measure, Errors> errors = new EnumMap<>(Measure.class);
        RandomStream random = RandomStream.of(1, "folds");
        for (int fold = 0; fold < FOLDS; fold++) {
            for (SurveyRows.Person person : SurveyRows.people(group, surveys.fold(fold, FOLDS, true))) {
                person.mm().keySet().removeAll(never);
                if (person.mm().size() > count) {
                    predict(person, choose(count, person.mm().keySet(), random), fits[fold], errors);
                }
            }
        }
        return errors;
    }

    static Set<Measure> choose(int count, Set<Measure> from, RandomStream random) {
        List<Measure> left = new ArrayList<>(from);
        while (left.size() > count) {
            left.remove(random.below(left.size()));
        }
        return java.util.EnumSet.copyOf(left);
    }

    private static void predict(SurveyRows.Person person, Set<Measure> given, Survey fit, Map<Measure, Errors> errors) {
        Map<Measure, Double> known = new EnumMap<>(person.mm());
        known.keySet().retainAll(given);
        Known who = Known.of(fit, person.age(), known);
        JointNormal.Expected expected = who.people().expect(who.logs());
        person.mm().forEach((measure, mm) -> {
            if (!given.contains(measure)) {
                errors.computeIfAbsent(measure, m -> new Errors())
                        .add(mm, expected.logs()[measure.ordinal()], expected.spreads()[measure.ordinal()]);
            }
        });
    }

    static Errors all(Map<Measure, Errors> errors) {
        Errors all = new Errors();
        errors.values().forEach(all::addAll);
        return all;
    }
}
