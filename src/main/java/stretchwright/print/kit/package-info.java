/**
 * KIT - what every sheet is made with: canvas, tags, pages, letters, paper, amounts, phrases.
 *
 * <p>In: drawing calls and words by key. Out: PDF and SVG bytes. Promise: one drawing for both media; same calls, same
 * bytes. Uses no other inner room. Read first: Canvas, PdfFile, Job.
 */
@NullMarked
package stretchwright.print.kit;

import org.jspecify.annotations.NullMarked;
