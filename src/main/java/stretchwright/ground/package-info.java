/**
 * GROUND - what every other room stands on: lengths and their units, plane geometry, findings, seeded random
 * streams, budgets.
 *
 * <p>In: nothing. Out: small immutable values. Promise: no clock, no file, no locale, no hidden random; millimetres
 * and degrees throughout, units only in {@link stretchwright.ground.Quantities}. Not here: anything that knows what
 * a leg or a cloth is. Read first: Point, Path, Polygon, then Finding.
 */
@NullMarked
package stretchwright.ground;

import org.jspecify.annotations.NullMarked;
