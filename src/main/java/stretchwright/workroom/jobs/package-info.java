/**
 * JOBS - long work that survives a restart, shared by all who work at one database.
 *
 * <p>In: a lay, a club or a table of sizes, with the rounds that it may take. Out: its files, once. Promise: whoever does
 * the work, and however often he was interrupted, the files are the same; what ended is stored once; what was under way when a
 * program died is taken over within seconds. Decision 0011. Read first: Jobs, Workers, LaySpells.
 */
@NullMarked
package stretchwright.workroom.jobs;

import org.jspecify.annotations.NullMarked;
