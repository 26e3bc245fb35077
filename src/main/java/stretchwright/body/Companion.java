package stretchwright.body;

import java.util.OptionalDouble;

/**
 * A measure beside what the others let expect of it.
 *
 * @param mm the value, given or estimated
 * @param spread of the value, mm; of hand measuring where given
 * @param expected of a given one: what all the other given ones let expect, mm; empty where it is estimated, the only
 *     one, or lies over a hard socket or brace
 * @param expectedSpread one standard deviation of that
 */
public record Companion(
        Measure measure,
        Value.Origin origin,
        double mm,
        double spread,
        OptionalDouble expected,
        OptionalDouble expectedSpread) {}
