/**
 * PRINT - results turned into bytes: true-scale PDF tiles, SVG, sewing plan.
 *
 * <p>In: pattern, lay, plan, fit, as values. Out: Document: a name and bytes. Promise: 1 mm on the pattern is 1 mm on
 * the paper; same input, same bytes. Inside, kit holds what all sheets are made with; the other inner rooms use kit and
 * never each other. Not here: writing files (cli, web). Read first: Printing, then Job in kit.
 */
@NullMarked
package stretchwright.print;

import org.jspecify.annotations.NullMarked;
