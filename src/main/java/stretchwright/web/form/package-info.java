/**
 * FORM - every option of a make as a field, from the table of keys.
 *
 * <p>In: what was typed, field by field, or the text of a make. Out: the other one of the two, and each finding where it
 * belongs. Promise: a value passes into the make file as it was typed; an option needs no line here. Read first: Form.
 */
@NullMarked
package stretchwright.web.form;

import org.jspecify.annotations.NullMarked;
