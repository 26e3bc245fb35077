/**
 * CLOTH - how it is cut: the lay drawn, the cutting list, what is left over, a club's sheets.
 *
 * <p>In: a lay and what follows from it. Out: PDF and SVG, and the words for both. Promise: what is drawn is what was
 * laid. Read first: LaySheet, LayDrawing, ClothWords.
 */
@NullMarked
package stretchwright.print.cloth;

import org.jspecify.annotations.NullMarked;
