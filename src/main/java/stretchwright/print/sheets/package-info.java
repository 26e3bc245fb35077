/**
 * SHEETS - the pattern on paper: tiles and their map, projector, tracing, sizes over each other.
 *
 * <p>In: a Job, or a NestJob. Out: PDF and SVG. Promise: true to scale, with test squares to prove it. Read first:
 * TiledPdf, SheetMap, PieceDrawing.
 */
@NullMarked
package stretchwright.print.sheets;

import org.jspecify.annotations.NullMarked;
