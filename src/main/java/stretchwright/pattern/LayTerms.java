package stretchwright.pattern;

import java.util.Optional;

/**
 * How the maker wants the pieces laid.
 *
 * @param gap room for scissors kept between pieces, mm; 0 where they may touch
 * @param tilt how far the grain may stand off the selvage, degrees
 * @param matchAt the notch at which a repeating print is to meet; every piece that has it lies at the same height of the print
 * @param crosswise the pieces lie turned by a quarter: what is along the cloth goes round the leg
 */
public record LayTerms(Style.LayWay way, double gap, double tilt, Optional<String> matchAt, boolean crosswise) {
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

    /** With the grain along the selvage. */
    public LayTerms(Style.LayWay way, double gap, double tilt, Optional<String> matchAt) {
        this(way, gap, tilt, matchAt, false);
    }

    /** Pieces may touch, the grain is straight. */
    public static LayTerms of(Style.LayWay way) {
        return new LayTerms(way, 0, 0, Optional.empty());
    }

    public LayTerms straight() {
        return new LayTerms(way, gap, 0, matchAt, crosswise);
    }

    public LayTerms with(Style.LayWay other) {
        return new LayTerms(other, gap, tilt, matchAt, crosswise);
    }

    public LayTerms gap(double mm) {
        return new LayTerms(way, mm, tilt, matchAt, crosswise);
    }

    public LayTerms tilt(double degrees) {
        return new LayTerms(way, gap, degrees, matchAt, crosswise);
    }

    public LayTerms matching(String notch) {
        return new LayTerms(way, gap, tilt, Optional.of(notch), crosswise);
    }

    public LayTerms crosswise(boolean turned) {
        return new LayTerms(way, gap, tilt, matchAt, turned);
    }
}
