/**
 * FIT - what the fit check says, on paper: verdicts, tables, plots, two makes compared.
 *
 * <p>In: a Job with its FitReport. Out: PDF and SVG. Promise: no more digits than the number has. Read first: FitPdf,
 * FitTables.
 */
@NullMarked
package stretchwright.print.fit;

import org.jspecify.annotations.NullMarked;
