/**
 * ASK - the first questions, one at a time.
 *
 * <p>In: answers. Out: the next question, and after the last one a make in the workroom. Promise: an answer is stored before the next
 * question comes; nothing that was estimated is shown as measured. Read first: AskScreen, Question.
 */
@NullMarked
package stretchwright.web.ask;

import org.jspecify.annotations.NullMarked;
