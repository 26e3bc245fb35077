package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Style;

/**
 * The strap under the foot: on the bare foot a folded strip of the cloth, from the hem at the inner ankle under the
 * arch to the hem at the outer ankle; under a boot a firm elastic that can be taken off. Maths: docs/maths/draft.md,
 * straps.
 */
final class Strap {
    /**
     * Width of the bare foot under the arch as a share of the foot's length: the ball is about 0.37 to 0.40 of it (from
     * memory), the waist of the foot about three quarters of that (common practice, no source).
     */
    static final double ARCH_SHARE = 0.30;

    /** A strap is cut this share shorter than its way, so that it holds without pulling the hem down [C]. */
    static final double TAUT = 0.10;

    /** Turned at each end of an elastic for hook tape or snaps, mm (common practice, no source). */
    static final double FASTENING = 30;

    /** Overlap of a strap of cloth on the inside of the hem, mm (common practice, no source). */
    static final double LAP = 15;

    /** The elastic needs this much room to either side in the gap between the mounts, mm (common practice). */
    static final double GAP_ROOM = 3;

    private Strap() {}

    /** On the bare foot, sewn from the cloth. */
    static boolean ofCloth(Style style) {
        return style.leg() == Style.Leg.STIRRUP && style.lower().strapWidth().isPresent();
    }

    private static boolean underBoot(Order order) {
        return order.boot().isPresent() && order.style().lower().strapWidth().isPresent();
    }

    /** From hem to hem, as worn on the bare foot, mm: down both sides of the foot and across the arch. */
    static double wayOnFoot(Order order) {
        double hem = HemHeights.onBody(order.body(), order.style().leg());
        return 2 * hem + ARCH_SHARE * order.body().mm(Measure.FOOT_LENGTH);
    }

    /** From hem to hem under the boot: down both sides to the sole's lower edge and across the arch, mm. */
    static double wayUnderBoot(Boot boot) {
        double down = boot.sole().ankleToSole().orElseThrow() - boot.ankleToHem();
        return 2 * down + boot.sole().arch().orElseThrow();
    }

    static Piece piece(Order order) {
        double width = order.style().lower().strapWidth().orElseThrow();
        return Bands.strap(wayOnFoot(order) * (1 - TAUT), width, LAP, order.style());
    }

    static Optional<Notion> elastic(Order order, Piece end) {
        if (!underBoot(order)) {
            return Optional.empty();
        }
        double way = wayUnderBoot(order.boot().orElseThrow());
        double width = order.style().lower().strapWidth().orElseThrow();
        double cut = Grid.snap(way * (1 - TAUT) + 2 * FASTENING);
        String edge = end.name().endsWith("cuff") ? "lower edge" : "hem";
        return Optional.of(new Notion("strap", 2, width, cut, Grid.snap(way), FASTENING, end.name(), edge));
    }

    static List<Reason> reasons(Order order, Optional<Piece> cloth, Optional<Notion> elastic) {
        if (cloth.isPresent()) {
            return List.of(new Reason(
                    "strap: length",
                    cloth.get().edge("lower edge").length(),
                    "(2 x hem height + 0.30 x foot length) x 0.90: down both sides of the foot and across the arch,"
                            + " a tenth shorter so that it holds",
                    List.of(
                            new Reason.Input(
                                    "hem height",
                                    HemHeights.onBody(
                                            order.body(), order.style().leg()),
                                    "mm",
                                    origin(order, Measure.ANKLE_HEIGHT)),
                            new Reason.Input(
                                    "foot length",
                                    order.body().mm(Measure.FOOT_LENGTH),
                                    "mm",
                                    origin(order, Measure.FOOT_LENGTH))),
                    "docs/maths/draft.md, straps; common practice, no source"));
        }
        return elastic.map(e -> List.of(underBoot(order.boot().orElseThrow(), e)))
                .orElse(List.of());
    }

    private static Reason underBoot(Boot boot, Notion elastic) {
        return new Reason(
                "strap: length",
                elastic.cut(),
                "(2 x (ankle to sole - ankle to hem) + arch width) x 0.90 + 2 x 30: down both sides, under the arch, a"
                        + " tenth shorter so that it holds, and the ends turned for hook tape or snaps",
                List.of(
                        new Reason.Input(
                                "ankle to sole", boot.sole().ankleToSole().orElseThrow(), "mm", "measured"),
                        new Reason.Input("ankle to hem", boot.ankleToHem(), "mm", "measured"),
                        new Reason.Input("arch width", boot.sole().arch().orElseThrow(), "mm", "measured")),
                "docs/maths/draft.md, straps; common practice, no source");
    }

    private static String origin(Order order, Measure measure) {
        return order.body().isGiven(measure) ? "measured" : "estimated";
    }
}
