package stretchwright.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** A wearer's body: every measure of {@link Measure}, given or estimated. */
public record Body(Figure figure, OptionalDouble age, Map<Measure, Value> values) {
    public Body {
        Map<Measure, Value> all = new EnumMap<>(values);
        for (Measure measure : Measure.values()) {
            if (!all.containsKey(measure)) {
                throw new IllegalArgumentException("a body needs its " + measure.term());
            }
        }
        values = java.util.Collections.unmodifiableMap(all);
    }

    public Value value(Measure measure) {
        Value value = values.get(measure);
        if (value == null) {
            throw new IllegalStateException("no " + measure.term());
        }
        return value;
    }

    /** The measure in mm, given or estimated. */
    public double mm(Measure measure) {
        return value(measure).mm();
    }

    public boolean isGiven(Measure measure) {
        return value(measure).origin() == Value.Origin.GIVEN;
    }
}
