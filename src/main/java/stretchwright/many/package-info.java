/**
 * MANY - makes or bodies by the dozen or thousand.
 *
 * <p>In: makes, or tables of bodies. Out: sets of sizes, clubs, surveys, comparisons, body tables. Promise: each is
 * drafted and judged as it would be alone; what is wrong with one is told with its name. Not here: one make (make).
 * Read first: Sizes, Club, SurveyRun.
 */
@NullMarked
package stretchwright.many;

import org.jspecify.annotations.NullMarked;
