package stretchwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Into which parts the leg is cut, and what is added to it.
 *
 * @param sideSeam none, or one that takes in the waist at the side
 * @param panelWidth finished width of a strip along the side in a second colour, mm
 * @param gusset a diamond at the crotch
 * @param kneeShaping room for the bent knee
 */
public record Parts(
        SideSeam sideSeam,
        OptionalDouble panelWidth,
        Optional<Gusset> gusset,
        boolean kneeShaping,
        List<Pocket> pockets) {
    public enum SideSeam {
        NONE,
        SHAPED
    }

    /** A diamond, finished: length from front to back and width from leg to leg, mm. */
    public record Gusset(double length, double width) {}

    /**
     * A pocket of a finished size, mm.
     *
     * @param thickness of the pad inside, mm; 0 where there is none
     */
    public record Pocket(Kind kind, double width, double height, double thickness) {
        public enum Kind {
            /** Flat, on the outer thigh, for a telephone. */
            PHONE,
            /** Inside, over the hip bone, for a pad. */
            HIP_PAD,
            /** Inside, over the tailbone. */
            TAILBONE_PAD,
            /** Inside, over the kneecap. */
            KNEE_PAD
        }
    }

    /** One piece per leg, nothing added. */
    public static final Parts PLAIN =
            new Parts(SideSeam.NONE, OptionalDouble.empty(), Optional.empty(), false, List.of());

    public Parts {
        pockets = List.copyOf(pockets);
    }
}
