/**
 * SEW - what now.
 *
 * <p>In: a make. Out: one step of its sewing plan after the other. Read first: SewScreen.
 */
@NullMarked
package stretchwright.web.sew;

import org.jspecify.annotations.NullMarked;
