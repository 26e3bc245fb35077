/**
 * SEW - what now.
 *
 * <p>In: a make. Out: one step of its sewing plan after the other, each machine set up in a step of its own. Promise: the place is kept
 * in the workroom, and what is done late or twice never takes back what was done; a browser that opened a step has the whole plan
 * without a connection. Read first: SewScreen, Place; in the browser sew.js and sew-worker.js.
 */
@NullMarked
package stretchwright.web.sew;

import org.jspecify.annotations.NullMarked;
