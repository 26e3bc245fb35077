package stretchwright.boot;

import java.util.OptionalDouble;

/** Invented boots for tests. */
public final class SampleBoot {
    private SampleBoot() {}

    /** 400 mm round heel and instep, hem 140 mm below the ankle bone. */
    public static Boot figure() {
        return new Boot("figure skate", 290, 400, 385, 140, 80, true, Boot.Dressing.LEG_FIRST);
    }

    /** The figure boot with its underside measured: hem 110 mm below the ankle bone, sole 135 mm below it. */
    public static Boot withSole(double factor, Boot.Dressing dressing) {
        Boot.Sole sole = new Boot.Sole(
                OptionalDouble.of(135 * factor),
                OptionalDouble.of(270 * factor),
                OptionalDouble.of(95 * factor),
                OptionalDouble.of(60 * factor),
                OptionalDouble.of(70 * factor),
                OptionalDouble.of(280 * factor));
        return new Boot(
                "figure skate",
                290 * factor,
                400 * factor,
                385 * factor,
                105 * factor,
                80 * factor,
                false,
                dressing,
                OptionalDouble.of(520 * factor),
                sole);
    }

    /** A figure boot grown or shrunk by a factor. */
    public static Boot scaled(double factor) {
        return new Boot(
                "figure skate",
                290 * factor,
                400 * factor,
                385 * factor,
                140 * factor,
                80 * factor,
                false,
                Boot.Dressing.LEG_FIRST);
    }
}
