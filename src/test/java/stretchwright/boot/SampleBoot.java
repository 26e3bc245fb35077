package stretchwright.boot;

/** Invented boots for tests. */
public final class SampleBoot {
    private SampleBoot() {}

    /** 400 mm round heel and instep, hem 140 mm below the ankle bone. */
    public static Boot figure() {
        return new Boot("figure skate", 290, 400, 385, 140, 80, true, Boot.Dressing.LEG_FIRST);
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
