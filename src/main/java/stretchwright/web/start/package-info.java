/**
 * START - where did I stop?
 *
 * <p>In: the workroom. Out: its first page: makes on a rail, wearers, cloths, boots. Read first: StartScreen.
 */
@NullMarked
package stretchwright.web.start;

import org.jspecify.annotations.NullMarked;
