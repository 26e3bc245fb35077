package stretchwright.fabric;

/**
 * The fold test: a length marked on folded cloth, as relaxed, pulled at an easy pull, and rested for a minute, mm.
 *
 * <p>Elongation, growth and recovery as the strip standards define them (EN 14704-1 and its successor, from memory;
 * trade-values section 1.1).
 */
public record FoldTest(double relaxed, double pulled, double rested) {
    public FoldTest {
        if (!(relaxed > 0 && pulled > relaxed && rested >= relaxed && rested <= pulled)) {
            throw new IllegalArgumentException("no fold test: " + relaxed + ", " + pulled + ", " + rested);
        }
    }

    /** (pulled - relaxed) / relaxed. */
    public double stretch() {
        return Strain.of(relaxed, pulled);
    }

    /** What stays longer after the rest: (rested - relaxed) / relaxed. */
    public double growth() {
        return Strain.of(relaxed, rested);
    }

    /** Share of the extension that came back. */
    public double recovery() {
        return Strain.recovery(relaxed, pulled, rested);
    }
}
