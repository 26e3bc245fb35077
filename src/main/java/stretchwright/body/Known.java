package stretchwright.body;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;

/** What is known of one wearer, as the survey's variables: logs, NaN where unknown. */
record Known(Survey survey, double[] logs) {
    /** A waist away from the natural one must explain the given values better by this much (of log density). */
    private static final double CLEARLY = 2;

    static Known of(Figure figure, OptionalDouble age, Map<Measure, Double> givenMm) {
        Survey survey = Survey.of(figure);
        return of(survey, age, givenMm);
    }

    static Known of(Survey survey, OptionalDouble age, Map<Measure, Double> givenMm) {
        boolean child = !survey.growth().isEmpty();
        double[] logs = new double[Survey.GROWTH + (child ? 1 : 0)];
        Arrays.fill(logs, Double.NaN);
        givenMm.forEach((measure, mm) -> logs[measure.ordinal()] = Math.log(mm));
        if (child && age.isPresent()) {
            logs[Survey.GROWTH] = survey.growth().at(age.getAsDouble());
        }
        return new Known(survey, logs);
    }

    Known without(Measure measure) {
        double[] fewer = logs.clone();
        fewer[measure.ordinal()] = Double.NaN;
        return new Known(survey, fewer);
    }

    boolean has(Measure measure) {
        return !Double.isNaN(logs[measure.ordinal()]);
    }

    double mm(Measure measure) {
        return Math.exp(logs[measure.ordinal()]);
    }

    /**
     * The survey with the waist at the level that explains the given values: the natural waist, unless its height or a
     * crotch length tells that the tape lay clearly lower.
     */
    JointNormal people() {
        JointNormal natural = survey.levels().get(0);
        if (!has(Measure.WAIST_HEIGHT) && !has(Measure.TOTAL_CROTCH_LENGTH) && !has(Measure.BACK_CROTCH_LENGTH)) {
            return natural;
        }
        return likeliest(CLEARLY);
    }

    /** The level at which the given values agree best. */
    JointNormal agreeing() {
        return isEmpty() ? survey.levels().get(0) : likeliest(0);
    }

    boolean isEmpty() {
        return Arrays.stream(logs).allMatch(Double::isNaN);
    }

    private JointNormal likeliest(double margin) {
        JointNormal best = survey.levels().get(0);
        if (survey.levels().size() == 1) {
            return best;
        }
        double most = best.agreement(logs).logDensity() + margin;
        for (JointNormal level : survey.levels().subList(1, survey.levels().size())) {
            double density = level.agreement(logs).logDensity();
            if (density > most) {
                most = density;
                best = level;
            }
        }
        return best;
    }
}
