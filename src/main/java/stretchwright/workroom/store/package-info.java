/**
 * STORE - things, their versions and the steps between them, in a database.
 *
 * <p>In: what a maker enters, as text. Out: the same, in every version it ever had. Promise: a save that returned is in the
 * database file; what was never saved leaves no trace; nothing is overwritten, only followed by a newer version. Knows
 * nothing of make files. Read first: Thing, Store, Database.
 */
@NullMarked
package stretchwright.workroom.store;

import org.jspecify.annotations.NullMarked;
