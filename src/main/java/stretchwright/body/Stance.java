package stretchwright.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How a wearer holds the body otherwise than the survey's middle one.
 *
 * @param seated whether the wearer sits all day: the draft lengthens the back and shortens the front
 * @param frontWaist height of the waist at centre front, mm; crotch lengths are then taken to there
 * @param backWaist the same at centre back
 * @param variations what whoever looks at the wearer names, with its amount, mm
 */
public record Stance(
        boolean seated, OptionalDouble frontWaist, OptionalDouble backWaist, Map<Variation, Double> variations) {
    public static final Stance STANDING = new Stance(false, OptionalDouble.empty(), OptionalDouble.empty(), Map.of());

    public static final Stance SITTING = new Stance(true, OptionalDouble.empty(), OptionalDouble.empty(), Map.of());

    public Stance {
        Map<Variation, Double> named = new EnumMap<>(Variation.class);
        named.putAll(variations);
        variations = Collections.unmodifiableMap(named);
    }

    public Stance named(Variation variation, double mm) {
        Map<Variation, Double> named = new EnumMap<>(Variation.class);
        named.putAll(variations);
        named.put(variation, mm);
        return new Stance(seated, frontWaist, backWaist, named);
    }

    public Stance waists(double front, double back) {
        return new Stance(seated, OptionalDouble.of(front), OptionalDouble.of(back), variations);
    }

    /** How far the centre front of the waist lies above its side, mm; 0 where it was not measured. */
    public double frontAbove(double side) {
        return frontWaist.isPresent() ? frontWaist.getAsDouble() - side : 0;
    }

    public double backAbove(double side) {
        return backWaist.isPresent() ? backWaist.getAsDouble() - side : 0;
    }

    /** On legs that are so much longer. */
    public Stance higher(double mm) {
        return new Stance(seated, raised(frontWaist, mm), raised(backWaist, mm), variations);
    }

    private static OptionalDouble raised(OptionalDouble height, double mm) {
        return height.isPresent() ? OptionalDouble.of(height.getAsDouble() + mm) : height;
    }
}
