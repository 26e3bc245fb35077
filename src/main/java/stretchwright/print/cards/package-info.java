/**
 * CARDS - single cards: to test a cloth, to take to the shop, to measure a body by.
 *
 * <p>In: what a cloth must do, or a body. Out: PDF and SVG. Promise: scales on a card are true. Read first: ClothCards,
 * BodySvg.
 */
@NullMarked
package stretchwright.print.cards;

import org.jspecify.annotations.NullMarked;
