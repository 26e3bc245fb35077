/**
 * PRINT - results turned into bytes: true-scale PDF tiles, SVG, sewing plan.
 *
 * <p>In: pattern, lay, plan, fit, as values. Out: Document: a name and bytes. Promise: 1 mm on the pattern is 1 mm on
 * the paper; same input, same bytes. Not here: writing files (cli, web). Read first: Printing, Job, TiledPdf.
 */
@NullMarked
package stretchwright.print;

import org.jspecify.annotations.NullMarked;
