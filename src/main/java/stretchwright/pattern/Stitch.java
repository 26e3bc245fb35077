package stretchwright.pattern;

import stretchwright.ground.Said;

/**
 * Stitches by ISO 4915 number, with how far a seam sewn in them stretches along itself before a thread breaks.
 *
 * <p>Extensibility: 301 seen in a maker's bulletin ("about 30 % or less"); the others common practice, no source, the
 * lower end of the band people quote (401: 30-60, 304: 50-80, 504, 514, 406: 100 and more).
 */
public enum Stitch {
    LOCKSTITCH(301, "straight lockstitch", Tell.said("stitch.lockstitch"), 0.30),
    ZIGZAG(304, "zigzag", Tell.said("stitch.zigzag"), 0.50),
    CHAINSTITCH(401, "two-thread chainstitch", Tell.said("stitch.chainstitch"), 0.30),
    COVERSTITCH(406, "two-needle coverstitch", Tell.said("stitch.coverstitch"), 1.00),
    OVERLOCK_3(504, "three-thread overlock", Tell.said("stitch.overlock-3"), 1.00),
    OVERLOCK_4(514, "four-thread overlock", Tell.said("stitch.overlock-4"), 1.00),
    BACKSTITCH_BY_HAND(209, "backstitch by hand", Tell.said("stitch.backstitch-by-hand"), 0.30);

    private final int number;
    private final String plainName;
    private final Said said;
    private final double extensibility;

    Stitch(int number, String plainName, Said said, double extensibility) {
        this.number = number;
        this.plainName = plainName;
        this.said = said;
        this.extensibility = extensibility;
    }

    /** The ISO 4915 number. */
    public int number() {
        return number;
    }

    /** As written in the report. */
    public String plainName() {
        return plainName;
    }

    public Said said() {
        return said;
    }

    /** Share by which a seam in this stitch stretches along itself before it breaks: 0.5 is 50 %. */
    public double extensibility() {
        return extensibility;
    }
}
