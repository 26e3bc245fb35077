/**
 * SEWING - the order of work on this pattern with these machines.
 *
 * <p>In: Pattern, Fabric, machines. Out: SewingPlan: operations in a valid order with stitch, seam, minutes, thread.
 * Promise: every operation comes from a seam of the pattern and stands after all that must come before it. Not here:
 * how it is worded and printed (its sentences stand in words.properties, by key). Read first: Planning, SewingPlan.
 */
@NullMarked
package stretchwright.sewing;

import org.jspecify.annotations.NullMarked;
