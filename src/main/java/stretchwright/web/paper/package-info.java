/**
 * PAPER - the files of a make, as they are printed and sent.
 *
 * <p>In: a make. Out: its files, each made when it is asked for. Promise: the same bytes as the make command writes. Read first:
 * FilesScreen.
 */
@NullMarked
package stretchwright.web.paper;

import org.jspecify.annotations.NullMarked;
