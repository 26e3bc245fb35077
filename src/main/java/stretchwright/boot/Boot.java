package stretchwright.boot;

/**
 * The laced boot, as four tape measures tell it.
 *
 * @param kind a label only, such as "figure skate"
 * @param topGirth round the boot's top edge, mm
 * @param heelGirth the longest loop round heel and instep, boot on, mm
 * @param hemGirth where the hem will sit, mm
 * @param ankleToHem from the ankle bone down to the hem, mm
 * @param ankleToTop from the ankle bone up to the boot's top edge, mm
 * @param topEstimated whether that last one was estimated and not measured
 * @param dressing how the leg is put on
 */
public record Boot(
        String kind,
        double topGirth,
        double heelGirth,
        double hemGirth,
        double ankleToHem,
        double ankleToTop,
        boolean topEstimated,
        Dressing dressing) {

    public enum Dressing {
        /** The leg is put on first, rolled up for lacing, and rolled down over the boot. */
        LEG_FIRST,
        /** The leg is pulled over the laced boot. */
        OVER_LACED_BOOT
    }

    /**
     * Height of the boot's top above the ankle bone where nobody measured it: collars of figure and artistic boots
     * stand about 60 to 100 mm above (common practice, no source).
     */
    public static final double USUAL_ANKLE_TO_TOP = 80;
}
