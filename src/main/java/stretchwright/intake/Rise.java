package stretchwright.intake;

import java.util.Optional;

/**
 * How far below the waist the top edge is to sit.
 *
 * @param mm empty for the top of the hips, which the measures say
 */
record Rise(Optional<Double> mm) {
    static final Rise WAIST = new Rise(Optional.of(0.0));
    static final Rise HIP = new Rise(Optional.empty());

    static Rise below(double mm) {
        return new Rise(Optional.of(mm));
    }
}
