/**
 * JOIN - a phone joins: pass phrase, and the code that leads there.
 *
 * <p>In: a pass phrase. Out: a browser that is let in, or told why not. Promise: the pass phrase stands on no page and in no code.
 * Read first: JoinScreen.
 */
@NullMarked
package stretchwright.web.join;

import org.jspecify.annotations.NullMarked;
