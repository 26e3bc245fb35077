package stretchwright.fabric;

/** Strain = (stretched - relaxed) / relaxed, as a share; trade-values section 1 and 2.1. */
public final class Strain {
    private Strain() {}

    /** A length relaxed and the length it is stretched to: 4 in to 6 in is 0.5. */
    public static double of(double relaxed, double stretched) {
        return stretched / relaxed - 1;
    }

    /** One strain on top of another: (1 + a)(1 + b) - 1. */
    public static double then(double first, double second) {
        return (1 + first) * (1 + second) - 1;
    }

    /** Share of the extension that came back: (stretched - rested) / (stretched - relaxed). */
    public static double recovery(double relaxed, double stretched, double rested) {
        return (stretched - rested) / (stretched - relaxed);
    }
}
