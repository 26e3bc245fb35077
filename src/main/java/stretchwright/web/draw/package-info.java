/**
 * DRAW - the line figures of the page: where the tape goes, boots, hands at a cloth, the pair as it is worn.
 *
 * <p>In: what is asked about, a body, a boot, a voice. Out: {@link stretchwright.web.draw.Drawing}, SVG text for a page of
 * strict content policy: classes only, no styles. Promise: pure; all outlines are computed from girths and heights, none is
 * copied; front is to the left, in every language. Read first: Pen, SideFigure.
 */
@NullMarked
package stretchwright.web.draw;

import org.jspecify.annotations.NullMarked;
