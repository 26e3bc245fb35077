/**
 * BOOT - from a few tape measures on the laced boot to a Boot.
 *
 * <p>In: girths and lengths in mm. Out: Boot; what was not measured is estimated and marked. Not here: whether a hem
 * passes it (fit). Read first: Boot.
 */
@NullMarked
package stretchwright.boot;

import org.jspecify.annotations.NullMarked;
