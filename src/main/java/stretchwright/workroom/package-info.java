/**
 * WORKROOM - what makers enter, from one pair to the next.
 *
 * <p>In: make files, and what is done with them. Out: wearers, cloths, boots, styles and makes that live on, in a database;
 * the next make from an earlier one; archives; long work that survives a restart. Promise: what was saved is never lost
 * and never overwritten in silence. Not here: drafting, checking, laying (make). Read first: Workroom; in store Thing,
 * Store.
 */
@NullMarked
package stretchwright.workroom;

import org.jspecify.annotations.NullMarked;
