/**
 * FRAME - what all screens share: the workroom, the make that is asked for, the sentence on top, the page around.
 *
 * <p>In: a request. Out: what a screen needs, and its page. Promise: a make that is open is the version that stands, and is drafted
 * once. Read first: Bench, Frame.
 */
@NullMarked
package stretchwright.web.frame;

import org.jspecify.annotations.NullMarked;
