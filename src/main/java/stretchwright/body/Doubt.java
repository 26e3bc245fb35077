package stretchwright.body;

import stretchwright.ground.Said;

/**
 * A given measure that is possible but unusual beside the others: worth a second reading, no reason to stop.
 *
 * @param expected what the other given measures let expect, mm
 * @param spread one standard deviation of that, mm
 * @param message for the wearer, with the numbers
 */
public record Doubt(Measure measure, double expected, double spread, Said message) {}
