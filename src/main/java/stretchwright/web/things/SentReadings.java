package stretchwright.web.things;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.body.Measure;
import stretchwright.body.MeasureGuide;
import stretchwright.body.Side;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.web.form.Form;

/** Readings of one measure as they were typed, up to three; of three of which only two agree these two are taken. */
record SentReadings(Measure measure, Unit unit, List<String> typed) {
    static final String ONCE = "once";
    static final String AGAIN = "again";
    static final String THIRD = "third";
    static final String SEATED = "seated";

    SentReadings {
        typed = List.copyOf(typed);
    }

    static SentReadings of(Measure measure, Unit unit, Form sent) {
        return new SentReadings(
                measure,
                unit,
                Stream.of(ONCE, AGAIN, THIRD)
                        .map(sent::value)
                        .map(String::strip)
                        .filter(t -> !t.isEmpty())
                        .toList());
    }

    /** Under which the measure stands in the make file. */
    static String key(Measure measure) {
        return "wearer.measurements." + measure.term();
    }

    static String key(Measure measure, Side side) {
        return key(measure) + "." + side.word();
    }

    static String hard(Side side) {
        return "wearer.hard." + side.word();
    }

    /** Whether two were read that lie too far apart, and no third. */
    boolean asksThird() {
        return typed.size() == 2 && !agree(typed);
    }

    /** Whether of three no two agree. */
    boolean noneAgree() {
        return typed.size() > 2 && taken().isEmpty();
    }

    /** Whether one of three is left out. */
    boolean leavesOne() {
        return typed.size() > 2 && taken().size() == 2;
    }

    /** Those that count; none where no two agree. */
    List<String> taken() {
        if (typed.size() < 2 || agree(typed)) {
            return typed;
        }
        List<String> nearest = List.of();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < typed.size(); i++) {
            List<String> two = new ArrayList<>(typed);
            two.remove(i);
            if (two.size() == 2 && agree(two) && apart(two) < least) {
                least = apart(two);
                nearest = List.copyOf(two);
            }
        }
        return nearest;
    }

    private boolean agree(List<String> some) {
        return apart(some) <= MeasureGuide.of(measure).tolerance() + 1e-9;
    }

    /** Mm between the least and the most; what is no length is told elsewhere. */
    double apart(List<String> some) {
        double[] mm = some.stream()
                .map(t -> Quantities.length(t, unit))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return mm.length < 2 ? 0 : mm[mm.length - 1] - mm[0];
    }

    double apart() {
        return apart(typed);
    }

    /** What the wearer's text says with what was sent. */
    static Form changed(Form before, Measure measure, Unit unit, Form sent) {
        Map<String, List<String>> all = new LinkedHashMap<>(before.typed());
        SentReadings readings = of(measure, unit, sent);
        List<String> taken = readings.taken().isEmpty() ? readings.typed : readings.taken();
        put(all, key(measure), String.join("; ", taken));
        for (Side side : Side.values()) {
            if (measure.ofLeg()) {
                put(all, key(measure, side), sent.value(side.word()));
                if (!sent.value(side.word()).isBlank()) {
                    all.remove(key(measure));
                }
            }
            if (measure.roundLeg()) {
                List<String> hard = new ArrayList<>(all.getOrDefault(hard(side), List.of()));
                hard.remove(measure.term());
                if (!sent.value("hard-" + side.word()).isBlank()) {
                    hard.add(measure.term());
                }
                all.put(hard(side), hard);
            }
        }
        put(all, "wearer.seated", sent.value(SEATED));
        return new Form(all);
    }

    private static void put(Map<String, List<String>> all, String key, String value) {
        all.remove(key);
        if (!value.isBlank()) {
            all.put(key, List.of(value.strip()));
        }
    }
}
