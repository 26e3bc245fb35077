/**
 * INTAKE - a make file read and checked.
 *
 * <p>In: the keys of a make file. Out: MakeFile, or findings. Promise: nothing is guessed; all findings at once, each
 * with its key and what to do; every limit with its reason. Not here: what becomes of it (make). Read first:
 * MakeReader, MakeFile, Limits.
 */
@NullMarked
package stretchwright.intake;

import org.jspecify.annotations.NullMarked;
