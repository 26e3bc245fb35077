/**
 * CLUB - many makes on one roll.
 *
 * <p>In: makes, a cloth, the length of a table. Out: a job of the workroom, and what came of it: tables, a list to cut by, totals.
 * Promise: it goes on when the page closes. Read first: ClubScreen.
 */
@NullMarked
package stretchwright.web.club;

import org.jspecify.annotations.NullMarked;
