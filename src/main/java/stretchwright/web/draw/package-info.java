/**
 * DRAW - line drawings of the screens, as the text of pictures.
 *
 * <p>In: results, as values. Out: SVG. Promise: no styles of their own: the page's look gives them. Read first: Outline.
 */
@NullMarked
package stretchwright.web.draw;

import org.jspecify.annotations.NullMarked;
