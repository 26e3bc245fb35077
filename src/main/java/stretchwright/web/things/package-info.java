/**
 * THINGS - wearers, cloths and boots: what is known of each, how old it is, and how it is measured.
 *
 * <p>In: what was read off a tape or a rule. Out: a new version of the thing, and of the make that asked for it. Promise: one
 * measure at a time, each told beside what the others let expect; what is wrong is stored nowhere. Read first: Held,
 * ReadingPage.
 */
@NullMarked
package stretchwright.web.things;

import org.jspecify.annotations.NullMarked;
