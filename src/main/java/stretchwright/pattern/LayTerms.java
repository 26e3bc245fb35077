package stretchwright.pattern;

import java.util.Optional;

/**
 * How the maker wants the pieces laid.
 *
 * @param gap room for scissors kept between pieces, mm; 0 where they may touch
 * @param tilt how far the grain may stand off the selvage, degrees
 * @param matchAt the notch at which a repeating print is to meet; every piece that has it lies at the same height of the print
 */
public record LayTerms(Style.LayWay way, double gap, double tilt, Optional<String> matchAt) {
    /** More than this is no room for scissors any more, mm; a limit of our own. */
    public static final double MOST_GAP = 50;

    /** Grain farther off than this makes a leg twist: 2 degrees (common practice, no source). */
    public static final double MOST_TILT = 2;

    public LayTerms {
        if (!(gap >= 0 && gap <= MOST_GAP)) {
            throw new IllegalArgumentException("a gap of " + gap + " mm");
        }
        if (!(tilt >= 0 && tilt <= MOST_TILT)) {
            throw new IllegalArgumentException("a grain tolerance of " + tilt + " degrees");
        }
    }

    /** Pieces may touch, the grain is straight. */
    public static LayTerms of(Style.LayWay way) {
        return new LayTerms(way, 0, 0, Optional.empty());
    }

    public LayTerms straight() {
        return new LayTerms(way, gap, 0, matchAt);
    }

    public LayTerms with(Style.LayWay other) {
        return new LayTerms(other, gap, tilt, matchAt);
    }
}
