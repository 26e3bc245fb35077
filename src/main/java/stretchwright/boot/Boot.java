package stretchwright.boot;

import java.util.OptionalDouble;

/**
 * The laced boot, as a few tape measures tell it.
 *
 * @param kind a label only, such as "figure skate"
 * @param topGirth round the boot's top edge, mm
 * @param heelGirth the longest loop round heel and instep, boot on, mm
 * @param hemGirth where the hem will sit, mm
 * @param ankleToHem from the ankle bone straight down to the hem, at the side of the boot, mm
 * @param ankleToTop from the ankle bone up to the boot's top edge, mm
 * @param topEstimated whether that last one was estimated and not measured
 * @param dressing how the leg is put on
 * @param guardGirth the longest loop round heel, blade guard or wheels, and instep, mm; for a leg pulled over them
 * @param sole what lies underneath
 */
public record Boot(
        String kind,
        double topGirth,
        double heelGirth,
        double hemGirth,
        double ankleToHem,
        double ankleToTop,
        boolean topEstimated,
        Dressing dressing,
        OptionalDouble guardGirth,
        Sole sole) {

    public enum Dressing {
        /** The leg is put on first, rolled up for lacing, and rolled down over the boot. */
        LEG_FIRST,
        /** The leg is pulled over the laced boot. */
        OVER_LACED_BOOT
    }

    /**
     * The sole and what is mounted on it; empty where nobody measured it.
     *
     * @param ankleToSole from the ankle bone straight down to the lower edge of the sole, mm
     * @param length of the sole, heel to toe, mm
     * @param width of the sole at its widest, mm
     * @param arch width of the sole where a strap would cross it, under the arch, mm
     * @param gap free length between the front and the rear mount (trucks, holder posts, sole and heel plate), mm
     * @param plate length of the plate or blade under the sole, mm
     */
    public record Sole(
            OptionalDouble ankleToSole,
            OptionalDouble length,
            OptionalDouble width,
            OptionalDouble arch,
            OptionalDouble gap,
            OptionalDouble plate) {
        public static final Sole UNKNOWN = new Sole(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());

        /** Whether all was measured that a cover down to the sole needs. */
        public boolean coverable() {
            return ankleToSole.isPresent() && length.isPresent() && width.isPresent();
        }

        /** Once round the sole's edge, as if it were two half circles and two straight sides, mm. */
        public double around() {
            double wide = width.orElseThrow();
            return 2 * (length.orElseThrow() - wide) + Math.PI * wide;
        }

        Sole scaled(double factor) {
            return new Sole(
                    times(ankleToSole, factor),
                    times(length, factor),
                    times(width, factor),
                    times(arch, factor),
                    times(gap, factor),
                    times(plate, factor));
        }

        private static OptionalDouble times(OptionalDouble mm, double factor) {
            return mm.isPresent() ? OptionalDouble.of(mm.getAsDouble() * factor) : mm;
        }
    }

    /** A boot whose underside was not measured. */
    public Boot(
            String kind,
            double topGirth,
            double heelGirth,
            double hemGirth,
            double ankleToHem,
            double ankleToTop,
            boolean topEstimated,
            Dressing dressing) {
        this(
                kind,
                topGirth,
                heelGirth,
                hemGirth,
                ankleToHem,
                ankleToTop,
                topEstimated,
                dressing,
                OptionalDouble.empty(),
                Sole.UNKNOWN);
    }

    /** The same boot for a larger or smaller foot: every tape measure times the factor. */
    public Boot scaled(double factor) {
        return new Boot(
                kind,
                topGirth * factor,
                heelGirth * factor,
                hemGirth * factor,
                ankleToHem * factor,
                ankleToTop * factor,
                topEstimated,
                dressing,
                Sole.times(guardGirth, factor),
                sole.scaled(factor));
    }

    /**
     * Height of the boot's top above the ankle bone where nobody measured it: collars of figure and artistic boots
     * stand about 60 to 100 mm above (common practice, no source).
     */
    public static final double USUAL_ANKLE_TO_TOP = 80;

    public boolean overLaced() {
        return dressing == Dressing.OVER_LACED_BOOT;
    }

    /** Girth so far below the top edge: in proportion between the top edge and where the hem girth was taken. */
    public double girthBelowTop(double mm) {
        double reach = ankleToTop + ankleToHem;
        double share = reach <= 0 ? 1 : Math.max(0, Math.min(1, mm / reach));
        return topGirth + share * (hemGirth - topGirth);
    }

    /** What a leg must pass that is pulled over the laced boot: heel, top edge, and guard or wheels where measured. */
    public double widestOverLaced() {
        return Math.max(Math.max(heelGirth, topGirth), guardGirth.orElse(0));
    }
}
