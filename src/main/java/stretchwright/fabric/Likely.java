package stretchwright.fabric;

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
        double tensionSpread) {}
