package stretchwright.settle;

import java.util.OptionalDouble;

/**
 * What may be changed at the top of a pattern and tried without drawing it again.
 *
 * @param above so far the waist edge is moved up, and each half of the crotch seam let out with it, mm on the flat piece
 * @param band length of the band all round, mm; empty as the pattern has it
 * @param pull of an elastic in it, N
 */
public record TopTrial(double above, OptionalDouble band, double pull) {
    public TopTrial above(double mm) {
        return new TopTrial(mm, band, pull);
    }
}
