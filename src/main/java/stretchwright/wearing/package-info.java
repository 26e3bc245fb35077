/**
 * WEARING - what was seen in wear, turned into a change of the next garment.
 *
 * <p>In: a make and what the worn garment does. Out: one bounded change, what it does to pattern and fit, and the make
 * file's text with it. Promise: every other letter of the file stays. Not here: the table of symptoms and the section
 * that is read again (intake). Read first: Wearing.
 */
@NullMarked
package stretchwright.wearing;

import org.jspecify.annotations.NullMarked;
