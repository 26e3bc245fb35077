/**
 * STEPS - how it is sewn: plan, booklet, checklist, a drawing for each step.
 *
 * <p>In: a Job. Out: PDF, HTML, SVG. Promise: every step of the plan is told and shown, in its order. Read first:
 * PlanPdf, Booklet, StepDrawing.
 */
@NullMarked
package stretchwright.print.steps;

import org.jspecify.annotations.NullMarked;
