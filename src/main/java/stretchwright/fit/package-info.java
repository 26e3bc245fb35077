/**
 * FIT - a Pattern on a Body in a Fabric and a Boot, judged before cutting.
 *
 * <p>In: Pattern, Body, Fabric, Boot, Style, machines. Out: FitReport with strain, tension and pressure per level,
 * openings, poses and verdicts. Promise: every number comes from the pattern as drawn, and every verdict names its
 * numbers and a remedy. Not here: changing the pattern. Read first: FitCheck, FitReport.
 */
@NullMarked
package stretchwright.fit;

import org.jspecify.annotations.NullMarked;
