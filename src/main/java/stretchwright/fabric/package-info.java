/**
 * FABRIC - from stretch tests, load - extension readings, width and direction to a Fabric.
 *
 * <p>In: readings. Out: Fabric with one monotone load curve per direction. Promise: an assumed curve says so. Here
 * too: strain, and the pressure of a pulled cloth round a cylinder. Not here: what the cloth does on a body (fit). Read
 * first: Fabric, LoadCurve, Laplace.
 */
@NullMarked
package stretchwright.fabric;

import org.jspecify.annotations.NullMarked;
