/**
 * DRAFT - from a Body, a Fabric, a Boot and a Style to a Pattern.
 *
 * <p>In: checked values. Out: Pattern in mm on the 0.01 mm grid, or findings that name the measures at odds. Promise:
 * the invariants of docs/maths/draft.md for every body; edges that are sewn together agree within 0.5 mm. Not here: how
 * it feels when worn (fit), how it lies on cloth (lay). Read first: Draft.
 */
@NullMarked
package stretchwright.draft;

import org.jspecify.annotations.NullMarked;
