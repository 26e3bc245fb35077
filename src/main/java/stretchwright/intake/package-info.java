/**
 * INTAKE - a make file read and checked.
 *
 * <p>In: the keys of a make file. Out: MakeFile, or findings. The table of keys has one row for each: its kind, range and
 * reason, usual value, example, everyday words, where it lives in a make. Promise: nothing is guessed; all findings at once,
 * each with its key, its line and what to do, in the file's unit. Not here: what becomes of it (make). Read first: Table, Key,
 * Kind, one of the rows (LegKeys), MakeReader.
 */
@NullMarked
package stretchwright.intake;

import org.jspecify.annotations.NullMarked;
