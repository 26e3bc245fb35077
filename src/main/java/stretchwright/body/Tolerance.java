package stretchwright.body;

import java.util.EnumMap;
import java.util.Map;

/** By how much a measure may be off, and the body it then would be. */
public final class Tolerance {
    private Tolerance() {}

    /**
     * mm: where given the difference at which two readings are taken again (5 at ankle, knee, calf and heel, 8 thigh, 12
     * waist, hip and crotch length, 10 heights); where estimated one standard deviation of the estimate.
     */
    public static double of(Body body, Measure measure) {
        return body.isGiven(measure)
                ? HandMeasuring.repeatLimit(measure)
                : body.value(measure).spread();
    }

    /** The body with one measure off by so many mm, on both legs where they were measured apart. */
    public static Body off(Body body, Measure measure, double by) {
        Map<Measure, Value> values = new EnumMap<>(body.values());
        values.put(measure, moved(body.value(measure), by));
        Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Map<Measure, Value> leg = new EnumMap<>(Measure.class);
            leg.putAll(body.legs().own(side));
            leg.computeIfPresent(measure, (m, v) -> moved(v, by));
            own.put(side, leg);
        }
        return new Body(
                body.figure(),
                body.age(),
                body.stance(),
                values,
                new Legs(own, body.legs().hard()));
    }

    private static Value moved(Value value, double by) {
        return new Value(value.mm() + by, value.origin(), value.spread());
    }
}
