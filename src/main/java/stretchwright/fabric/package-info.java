/**
 * FABRIC - from stretch tests, load - extension readings, width and direction to a Fabric.
 *
 * <p>In: readings. Out: Fabric with one monotone load curve per direction. Promise: an assumed curve says so. Not
 * here: what the cloth does on a body (fit). Read first: Fabric, LoadCurve.
 */
@NullMarked
package stretchwright.fabric;

import org.jspecify.annotations.NullMarked;
