package stretchwright.advice;

import stretchwright.ground.Part;
import stretchwright.ground.Unit;

/**
 * The steps by which a length is changed: what the maker's tape shows, 1 mm or a sixteenth of an inch, so that the amount
 * that is told is the amount that was tried.
 */
record ChangeSteps(Unit unit) {
    private static final double SIXTEENTH = 25.4 / 16;

    /** mm. */
    private double one() {
        return unit == Unit.IN ? SIXTEENTH : 1;
    }

    double mm(int steps) {
        return steps * one();
    }

    /** Whole steps within a length; one at least. */
    int within(double mm) {
        return Math.max(1, (int) Math.floor(mm / one() + 1e-9));
    }

    /** Whole steps that reach a length. */
    int reaching(double mm) {
        return (int) Math.ceil(mm / one());
    }

    /** The longest length of whole steps that is no longer. */
    double down(double mm) {
        return Math.floor(mm / one() + 1e-9) * one();
    }

    /** The next length of whole inch steps; in mm as it is. */
    double onTape(double mm) {
        return unit == Unit.IN ? Math.round(mm / SIXTEENTH) * SIXTEENTH : mm;
    }

    /** With half millimetres where there are such. */
    static Part told(double mm) {
        return Part.length(mm, Math.abs(mm - Math.rint(mm)) < 1e-6 ? 0 : 1);
    }
}
