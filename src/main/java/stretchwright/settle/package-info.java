/**
 * SETTLE - where a drafted pattern comes to rest on its wearer: waist edge, back, hem, standing and after a deep bend.
 *
 * <p>In: pattern, body, fabric, boot, style; what nobody measured of them (Guess). Out: LegShape, the garment's widths
 * beside the body's girths; Settles, where its edges come to lie, what pulls there and what grips. Promise: pure; for
 * the same guess one answer. Not here: verdicts and words (fit), what to change (draft, advice), the mechanics itself
 * (balance). Read first: Settles, HalfGarment, then docs/maths/balance.md.
 */
@NullMarked
package stretchwright.settle;

import org.jspecify.annotations.NullMarked;
