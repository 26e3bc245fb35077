package stretchwright.fabric;

import stretchwright.ground.Chance;

/**
 * Within what a level's numbers lie in 8 of 10 garments.
 *
 * @param strainLow share, below the strain told
 * @param pressureLow kPa, below the pressure told
 * @param spread of the pressure's logarithm, one standard deviation
 * @param tensionSpread of the tension's logarithm, as far as the load curve goes
 */
public record Likely(
        double strainLow,
        double strainHigh,
        double pressureLow,
        double pressureHigh,
        double spread,
        double tensionSpread) {
    /**
     * The same with something else that presses, too.
     *
     * @param own kPa of what this tells of
     * @param more kPa
     * @param moreSpread of its logarithm
     */
    public Likely with(double own, double more, double moreSpread) {
        return new Likely(
                strainLow,
                strainHigh,
                pressureLow + more * StrictMath.exp(-Chance.EIGHT_IN_TEN * moreSpread),
                pressureHigh + more * StrictMath.exp(Chance.EIGHT_IN_TEN * moreSpread),
                Math.hypot(own * spread, more * moreSpread) / (own + more),
                tensionSpread);
    }
}
