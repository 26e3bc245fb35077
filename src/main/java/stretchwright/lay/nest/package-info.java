/**
 * NEST - outlines on a strip, without overlap, in the least length.
 *
 * <p>In: parts with their turns, a strip, a seed, a clock. Out: Layout. Promise: checked in exact integers; same input
 * and steps, same layout, whatever the thread count. Knows nothing of garments: no piece, no cloth. Read first: Part,
 * Strip, BottomLeft, Crew.
 */
@NullMarked
package stretchwright.lay.nest;

import org.jspecify.annotations.NullMarked;
