/**
 * BALANCE - where a sewn tube of stretch cloth settles along trunk and leg, held by friction alone.
 *
 * <p>In: plain numbers of one half of a garment (Tube) and what the body does to it in a pose (Pose). Out: Settled, how
 * far each ring slides, what pulls at the edges and what grips there. Promise: for a given friction one answer; a state
 * that was not found says so; same input, same output. Half a garment in, half its forces out. Not here: styles,
 * verdicts, words, where the numbers come from (draft, fit). Read first: Balance, Tube, then docs/maths/balance.md.
 */
@NullMarked
package stretchwright.balance;

import org.jspecify.annotations.NullMarked;
