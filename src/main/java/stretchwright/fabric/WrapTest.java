package stretchwright.fabric;

/**
 * The wrap test: cloth wrapped round the body until it is comfortable, pinned, taken off and measured flat, mm.
 *
 * @param girth of the body there
 * @param pinned length of the cloth between the pins, lying flat
 */
public record WrapTest(double girth, double pinned) {
    /** Share of the stretch a medium hold uses standing; what is comfortable is taken for that (docs/maths/fit.md). */
    static final double SHARE_AT_COMFORT = 0.25;

    public WrapTest {
        if (!(pinned > 0 && pinned < girth)) {
            throw new IllegalArgumentException("no wrap test: " + pinned + " round " + girth);
        }
    }

    /** By how much the cloth was shorter than the girth, as a share of the girth: 840 round 960 is 0.125. */
    public double reduction() {
        return 1 - pinned / girth;
    }

    /** Strain at comfort: e = r / (1 - r). */
    public double strain() {
        return Strain.of(pinned, girth);
    }

    /** An assumption and not a reading: the whole stretch, if comfort took a quarter of it. */
    public double assumedStretch() {
        return strain() / SHARE_AT_COMFORT;
    }
}
