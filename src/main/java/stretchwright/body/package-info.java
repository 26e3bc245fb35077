/**
 * BODY - from what was measured to a checked Body: given and estimated values with their spread.
 *
 * <p>In: measures in mm by ISO 8559-1 term, figure, age. Out: Body, or findings. Promise: every value says whether it
 * was given or estimated and how far to trust it; one girth profile that draft and fit share. Not here: cloth, boots.
 * Read first: Measuring, Measured, Measure, Body.
 * Maths and sources: docs/maths/body.md.
 */
@NullMarked
package stretchwright.body;

import org.jspecify.annotations.NullMarked;
