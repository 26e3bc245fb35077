/**
 * WORN - what a worn pair did, and the one change that follows.
 *
 * <p>In: a symptom and the answer to its question, or marks on a first pair. Out: the changed pattern beside the one before, and,
 * asked for, the next version of the make. Promise: one bounded change at a time, shown before it is made. Read first: WornScreen.
 */
@NullMarked
package stretchwright.web.worn;

import org.jspecify.annotations.NullMarked;
