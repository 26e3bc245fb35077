/**
 * ARCHIVE - a whole workroom as one file, and back.
 *
 * <p>In: a store, or a file that anybody may have made. Out: the file (docs/workroom.md tells its format), or what is in it.
 * Promise: out and in again gives an equal store; a file that is no such archive changes nothing and writes nothing outside
 * the workroom. Every format that was ever written stays readable. Read first: ArchiveWriter, ArchiveReader, Merge.
 */
@NullMarked
package stretchwright.workroom.archive;

import org.jspecify.annotations.NullMarked;
