/**
 * CLI - the command door: parse, call, show; writes files complete or not at all.
 *
 * <p>In: arguments. Out: files, messages on standard error, exit codes 0 done, 1 fault, 2 input wrong, 3 cannot work as
 * asked. Read first: Commands.
 */
@NullMarked
package stretchwright.cli;

import org.jspecify.annotations.NullMarked;
