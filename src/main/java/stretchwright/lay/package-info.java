/**
 * LAY - pieces on the cloth, without overlap, in the least length.
 *
 * <p>In: pieces, fabric, the ways allowed. Out: Lay: placements, length, what to buy, a floor under any lay. Promise:
 * checked in exact integers on the 0.01 mm grid; same input, same lay. Not here: drawing it (print). Read first:
 * Laying, Lay.
 */
@NullMarked
package stretchwright.lay;

import org.jspecify.annotations.NullMarked;
