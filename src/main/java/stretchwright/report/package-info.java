/**
 * REPORT - results as report.json.
 *
 * <p>In: a make file and what it became, as values. Out: a Document. Promise: the report follows report.schema.json;
 * field names are extended, never renamed; same input, same bytes. Not here: the stages (make). Read first: Report.
 */
@NullMarked
package stretchwright.report;

import org.jspecify.annotations.NullMarked;
