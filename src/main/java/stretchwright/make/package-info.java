/**
 * MAKE - a make file through all stages to the results.
 *
 * <p>In: the text of a make file. Out: Made: pattern, fit, lay, plan, documents and the report. Promise: pure; all
 * findings at once. The only room that chains the stages. Not here: reading the file (intake), many makes at once
 * (many). Read first: Make.
 */
@NullMarked
package stretchwright.make;

import org.jspecify.annotations.NullMarked;
