package stretchwright.body;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.Findings;

/**
 * Turns measures that cannot be right into findings: single values outside what people measure, values out of order,
 * values at odds with the others. Rare bodies pass.
 */
final class Plausibility {
    /**
     * Spreads beyond which a value is an error and not a rare body: chosen so that fewer than 1 in 1000 clean survey
     * rows are refused (docs/maths/body.md has the counts).
     */
    static final double IMPOSSIBLE = 6;

    /**
     * The same for a waist or hip larger than expected: the surveys the expectation comes from have few heavy people,
     * and among US civilians true bodies reach 9.5 spreads above it.
     */
    static final double IMPOSSIBLY_STOUT = 10;

    /** Limit for the distance of all values together, and how many there must be for it to tell. */
    static final double NO_BODY = 5.5;

    static final int ENOUGH = 8;

    /** Spreads beyond which a second reading is suggested. */
    static final double UNUSUAL = 3.5;

    private static final String KEY = "wearer.measurements";

    private final Figure figure;
    private final OptionalDouble age;
    private final Findings findings;
    private final Survey survey;
    private final Map<Measure, Double> sound = new EnumMap<>(Measure.class);
    private boolean clean = true;

    private Plausibility(Figure figure, OptionalDouble age, Findings findings) {
        this.figure = figure;
        this.age = age;
        this.findings = findings;
        this.survey = Survey.of(figure);
    }

    private static double limit(AtOdds.Odd odd) {
        boolean trunk = odd.measure() == Measure.WAIST_GIRTH || odd.measure() == Measure.HIP_GIRTH;
        return trunk && odd.spreadsOff() > 0 ? IMPOSSIBLY_STOUT : IMPOSSIBLE;
    }

    /** Whether nothing was found. */
    static boolean check(Figure figure, OptionalDouble age, Map<Measure, Double> givenMm, Findings findings) {
        Plausibility plausibility = new Plausibility(figure, usable(figure, age), findings);
        if (plausibility.age.isEmpty() && age.isPresent()) {
            plausibility.ageFinding(age.getAsDouble());
        }
        plausibility.check(givenMm);
        return plausibility.clean;
    }

    private static OptionalDouble usable(Figure figure, OptionalDouble age) {
        if (age.isEmpty()) {
            return age;
        }
        Growth growth = Survey.of(figure).growth();
        double low = growth.isEmpty() ? 12 : growth.first();
        double high = growth.isEmpty() ? 120 : growth.last() + 1;
        return age.getAsDouble() >= low && age.getAsDouble() <= high ? age : OptionalDouble.empty();
    }

    private void ageFinding(double years) {
        String range = figure == Figure.CHILD
                ? "The figure child is for 2 to 20 years; older wearers are a woman or a man."
                : "The figures woman and man are for 12 years and over; younger wearers are a child.";
        report(
                "wearer.age",
                String.format(
                        Locale.ROOT, "%s years does not go with the figure %s.", Remedy.plain(years), figure.word()),
                range);
    }

    private void check(Map<Measure, Double> givenMm) {
        if (givenMm.isEmpty()) {
            report(
                    KEY,
                    "nothing was measured.",
                    "At least one measure is needed to estimate the others; stature, hip girth and crotch height do best.");
            return;
        }
        for (Measure measure : Measure.values()) {
            Double mm = givenMm.get(measure);
            if (mm != null && inRange(measure, mm, givenMm)) {
                sound.put(measure, mm);
            }
        }
        if (!sound.isEmpty()) {
            Set<Measure> reported = order();
            reported.forEach(sound::remove);
            atOdds();
            together();
        }
    }

    /** Many values, none far off alone, but together far from any body: measures of different people, say. */
    private void together() {
        Known known = Known.of(figure, age, sound);
        if (!clean || sound.size() < ENOUGH || AtOdds.together(known) <= NO_BODY) {
            return;
        }
        AtOdds.find(known, odd -> 0).stream()
                .findFirst()
                .ifPresent(odd -> report(
                        KEY,
                        String.format(
                                Locale.ROOT,
                                "the %d measures do not go together; the %s of %s mm and the %s of %s mm fit least.",
                                sound.size(),
                                odd.measure().term(),
                                Remedy.plain(odd.mm()),
                                odd.with().term(),
                                Remedy.plain(known.mm(odd.with()))),
                        String.format(
                                Locale.ROOT,
                                "Expected is a %s near %.0f mm; are all measures of the same person and in one unit?",
                                odd.measure().term(),
                                odd.expected())));
    }

    private boolean inRange(Measure measure, double mm, Map<Measure, Double> givenMm) {
        if (!(mm > 0 && Double.isFinite(mm))) {
            report(
                    key(measure),
                    Remedy.plain(mm) + " mm is no length.",
                    "A length above zero is needed, or leave the line out.");
            return false;
        }
        Survey.Range range = range(measure);
        if (mm >= range.low() && mm <= range.high()) {
            return true;
        }
        Map<Measure, Double> others = new EnumMap<>(givenMm);
        others.remove(measure);
        others.values().removeIf(v -> !(v > 0 && Double.isFinite(v)));
        others.entrySet()
                .removeIf(e -> e.getValue() < range(e.getKey()).low()
                        || e.getValue() > range(e.getKey()).high());
        report(
                key(measure),
                String.format(
                        Locale.ROOT,
                        "%s mm is outside what people measure (%.0f to %.0f mm).",
                        Remedy.plain(mm),
                        range.low(),
                        range.high()),
                Remedy.of(measure, mm, Known.of(figure, age, others)));
        return false;
    }

    private Survey.Range range(Measure measure) {
        Survey.Range range = survey.ranges().get(measure);
        if (range == null) {
            throw new IllegalStateException("no range of " + measure.term());
        }
        return range;
    }

    /** Of each pair out of order the value that stands further off is reported. */
    private Set<Measure> order() {
        Set<Measure> reported = EnumSet.noneOf(Measure.class);
        for (List<Measure> pair : HeightOrder.PAIRS) {
            Double low = sound.get(pair.get(0));
            Double high = sound.get(pair.get(1));
            if (low != null
                    && high != null
                    && low >= high
                    && !reported.contains(pair.get(0))
                    && !reported.contains(pair.get(1))) {
                reported.add(outOfOrder(pair.get(0), low, pair.get(1), high));
            }
        }
        return reported;
    }

    private Measure outOfOrder(Measure smaller, double low, Measure larger, double high) {
        Measure wrong = leftWithout(smaller) <= leftWithout(larger) ? smaller : larger;
        Measure other = wrong == smaller ? larger : smaller;
        double mm = wrong == smaller ? low : high;
        Map<Measure, Double> others = new EnumMap<>(sound);
        others.remove(wrong);
        report(
                key(wrong),
                String.format(
                        Locale.ROOT,
                        "%s mm is not %s the %s of %s mm.",
                        Remedy.plain(mm),
                        wrong == smaller ? "below" : "above",
                        other.term(),
                        Remedy.plain(wrong == smaller ? high : low)),
                Remedy.of(wrong, mm, Known.of(figure, age, others)));
        return wrong;
    }

    /** How badly the others go together without this one. */
    private double leftWithout(Measure measure) {
        Known rest = Known.of(figure, age, sound).without(measure);
        return rest.agreeing().agreement(rest.logs()).distance();
    }

    private void atOdds() {
        Known known = Known.of(figure, age, sound);
        for (AtOdds.Odd odd : AtOdds.find(known, Plausibility::limit)) {
            Map<Measure, Double> others = new EnumMap<>(sound);
            others.remove(odd.measure());
            String beside = odd.with() == odd.measure()
                    ? "does not go with the age"
                    : String.format(
                            Locale.ROOT,
                            "does not go with the %s of %s mm%s",
                            odd.with().term(),
                            Remedy.plain(known.mm(odd.with())),
                            others.size() > 1 ? " and the other measures" : "");
            String remedy = Remedy.exchanged(odd, known)
                    .orElseGet(() -> Remedy.of(odd.measure(), odd.mm(), Known.of(figure, age, others)));
            report(key(odd.measure()), String.format(Locale.ROOT, "%s mm %s.", Remedy.plain(odd.mm()), beside), remedy);
            sound.remove(odd.measure());
        }
    }

    private void report(String key, String problem, String remedy) {
        clean = false;
        findings.add(key, problem, remedy);
    }

    private static String key(Measure measure) {
        return KEY + "." + measure.term();
    }
}
