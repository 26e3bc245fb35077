package stretchwright.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A wearer's body: every measure of {@link Measure}, given or estimated.
 *
 * @param stance how the wearer holds it
 * @param values where the legs differ, of the body as a whole (the mean of both)
 * @param legs how the legs differ
 */
public record Body(Figure figure, OptionalDouble age, Stance stance, Map<Measure, Value> values, Legs legs) {
    /** Of the crotch length, behind, where it was not measured: mean of the women of 1988, 0.506 to 0.512. */
    public static final double BACK_OF_CROTCH = 0.51;

    /** Hip girth of the body on which lengths were found that grow with a body, mm. */
    private static final double MIDDLE_HIP = 965;

    /** A standing wearer with two legs alike. */
    public Body(Figure figure, OptionalDouble age, Map<Measure, Value> values) {
        this(figure, age, Stance.STANDING, values, Legs.ALIKE);
    }

    public Body {
        Map<Measure, Value> all = new EnumMap<>(values);
        for (Measure measure : Measure.values()) {
            if (!all.containsKey(measure)) {
                throw new IllegalArgumentException("a body needs its " + measure.term());
            }
        }
        values = java.util.Collections.unmodifiableMap(all);
    }

    /** Whether the wearer sits all day. */
    public boolean seated() {
        return stance.seated();
    }

    /** How large, beside the body on which lengths were found that grow with a body. */
    public double size() {
        return mm(Measure.HIP_GIRTH) / MIDDLE_HIP;
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

    /** The body with both legs like this one. */
    public Body leg(Side side) {
        Map<Measure, Value> all = new EnumMap<>(values);
        all.putAll(legs.own(side));
        // a longer leg lifts what is above it by as much: the seat is the body's own
        double longer = all.getOrDefault(Measure.CROTCH_HEIGHT, value(Measure.CROTCH_HEIGHT))
                        .mm()
                - mm(Measure.CROTCH_HEIGHT);
        for (Measure above : List.of(Measure.WAIST_HEIGHT, Measure.HIP_HEIGHT)) {
            Value v = value(above);
            all.put(above, new Value(v.mm() + longer, v.origin(), v.spread()));
        }
        Legs both = new Legs(Map.of(), Map.of(Side.LEFT, legs.hard(side), Side.RIGHT, legs.hard(side)));
        return new Body(figure, age, stance.higher(longer), all, both);
    }

    /** Whether this girth is that of a hard socket or brace on both legs; ask {@link #leg} first where they differ. */
    public boolean isHard(Measure measure) {
        return legs.hard(Side.LEFT).contains(measure) && legs.hard(Side.RIGHT).contains(measure);
    }
}
