/**
 * PATTERN - the nouns every later room shares: Pattern, Piece, Edge, Seam, Notch, Grain, Level, Style, Stitch, Machine.
 *
 * <p>In: nothing. Out: values in mm on the 0.01 mm grid. Promise: a piece that exists is closed and counter-clockwise,
 * its edges join end to start, its cut line is its sew line plus the allowances. Not here: how a piece comes about
 * (draft) or what becomes of it (fit, lay, sewing, print). Read first: Pattern, Piece, Edge.
 */
@NullMarked
package stretchwright.pattern;

import org.jspecify.annotations.NullMarked;
