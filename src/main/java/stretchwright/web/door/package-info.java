/**
 * DOOR - who may ask, and how much may be sent.
 *
 * <p>In: a request. Out: the fields of its form, or a refusal. Promise: nothing is read without a bound; who has not joined sees
 * nothing but how to. Read first: Door, Seal, Guard.
 */
@NullMarked
package stretchwright.web.door;

import org.jspecify.annotations.NullMarked;
