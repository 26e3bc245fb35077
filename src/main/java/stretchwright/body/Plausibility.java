package stretchwright.body;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

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
        report(
                "wearer.age",
                Tell.said("age.figure", Part.number(years, 1), Part.text(figure.word())),
                figure == Figure.CHILD ? Tell.said("age.child-help") : Tell.said("age.adult-help"));
    }

    private void check(Map<Measure, Double> givenMm) {
        if (givenMm.isEmpty()) {
            report(KEY, Tell.said("measures.none"), Tell.said("measures.none-help"));
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
                        Tell.said(
                                "measures.together",
                                Part.count(sound.size()),
                                odd.measure().said(),
                                Tell.taken(odd.mm()),
                                odd.with().said(),
                                Tell.taken(known.mm(odd.with()))),
                        Tell.said("measures.together-help", odd.measure().said(), Part.length(odd.expected()))));
    }

    private boolean inRange(Measure measure, double mm, Map<Measure, Double> givenMm) {
        if (!(mm > 0 && Double.isFinite(mm))) {
            report(key(measure), Tell.said("measure.no-length", Tell.taken(mm)), Tell.said("measure.no-length-help"));
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
                Tell.said("measure.outside", Tell.taken(mm), Part.span(range.low(), range.high())),
                Remedy.of(measure, mm, findings.unit(), Known.of(figure, age, others)));
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
        Part[] parts = {Tell.taken(mm), other.said(), Tell.taken(wrong == smaller ? high : low)};
        report(
                key(wrong),
                wrong == smaller ? Tell.said("measure.not-below", parts) : Tell.said("measure.not-above", parts),
                Remedy.of(wrong, mm, findings.unit(), Known.of(figure, age, others)));
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
            Said remedy = Remedy.exchanged(odd, known)
                    .orElseGet(
                            () -> Remedy.of(odd.measure(), odd.mm(), findings.unit(), Known.of(figure, age, others)));
            report(key(odd.measure()), beside(odd, known, others.size() > 1), remedy);
            sound.remove(odd.measure());
        }
    }

    private static Said beside(AtOdds.Odd odd, Known known, boolean more) {
        Part taken = Tell.taken(odd.mm());
        if (odd.with() == odd.measure()) {
            return Tell.said("measure.age", taken);
        }
        Part[] parts = {taken, odd.with().said(), Tell.taken(known.mm(odd.with()))};
        return more ? Tell.said("measure.with-others", parts) : Tell.said("measure.with-one", parts);
    }

    private void report(String key, Said problem, Said remedy) {
        clean = false;
        findings.add(key, problem, remedy);
    }

    private static String key(Measure measure) {
        return KEY + "." + measure.term();
    }
}
