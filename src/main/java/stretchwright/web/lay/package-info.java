/**
 * LAY - how much cloth, and how the pieces lie on it.
 *
 * <p>In: a make. Out: its lay as a drawing, what to buy. Read first: LayScreen.
 */
@NullMarked
package stretchwright.web.lay;

import org.jspecify.annotations.NullMarked;
