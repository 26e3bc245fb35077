/**
 * PAPER - the pattern on its sheets, and the files of a make, as they are printed and sent.
 *
 * <p>In: a make. Out: its paper, its sheets as a map to tick, those pages alone; its files, each made when it is asked for. Promise: the
 * same bytes as the make command writes, page by page. Read first: PrintScreen, Chosen, FilesScreen.
 */
@NullMarked
package stretchwright.web.paper;

import org.jspecify.annotations.NullMarked;
