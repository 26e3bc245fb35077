/**
 * DRAFT - may I cut, what to change, and why.
 *
 * <p>In: a make and what is changed of it. Out: its pattern as a drawing with what can be moved, its verdicts, its versions. Promise: what
 * is only tried is not stored; what is changed is a version that can be gone back to. Read first: DraftScreen.
 */
@NullMarked
package stretchwright.web.draft;

import org.jspecify.annotations.NullMarked;
