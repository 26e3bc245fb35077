package stretchwright.fit;

import java.util.OptionalDouble;

/**
 * How the cloth grows in area at a region in a pose.
 *
 * @param areal (1 + across)(1 + along) - 1, across by the skin's own growth at the place
 * @param weight of the stretched cloth, g/m2; empty where the cloth's is not known
 * @param limit areal stretch at which the test card showed; empty where it was not tested
 */
public record Cover(Region region, PoseName pose, double areal, OptionalDouble weight, OptionalDouble limit) {
    public boolean shows() {
        return limit.isPresent() && areal >= limit.getAsDouble();
    }
}
