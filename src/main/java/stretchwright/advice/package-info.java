/**
 * ADVICE - changes that were tried.
 *
 * <p>In: a make and the verdicts on it. Out: remedies, each drafted and judged before it is offered; which cloth a
 * style needs. Promise: counted and not timed, so the same make gets the same advice. Not here: printing it (print).
 * Read first: Remedies, ChangeLever.
 */
@NullMarked
package stretchwright.advice;

import org.jspecify.annotations.NullMarked;
