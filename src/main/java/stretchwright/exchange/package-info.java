/**
 * EXCHANGE - the pattern in open formats that other programs and machines read: DXF, HP-GL, PNG.
 *
 * <p>In: a pattern and what people call it (Handover). Out: finished files as bytes. Promise: no point lies farther than
 * 0.001 mm (DXF) or 0.018 mm (HP-GL, half a plotter unit each way) from the pattern's; no name can break a file; the same
 * input gives the same bytes. Not here: paper (print) and the lay on the cloth (lay). Read first: Exchange, PatternDxf.
 */
@NullMarked
package stretchwright.exchange;

import org.jspecify.annotations.NullMarked;
