package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.ground.Part;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Shift;
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

    /**
     * What spans the way is this share shorter than it, so that the strap holds without pulling the hem down [C]; closed it is
     * stretched by 11 %.
     */
    static final double TAUT = 0.10;

    /** Turned at each end of an elastic for hook tape or snaps, mm (common practice, no source). */
    static final double FASTENING = 30;

    /** So deep the turned end lies on the other half inside the hem, mm: the tape is as long as the turn. */
    static final double LAP_OF_FASTENING = FASTENING;

    /** Overlap of a strap of cloth on the inside of the hem, mm (common practice, no source). */
    static final double LAP = 15;

    /** The elastic needs this much room to either side in the gap between the mounts, mm (common practice). */
    static final double GAP_ROOM = 3;

    private static final Dimension LENGTH = Dimension.of(PieceName.of(PieceKind.STRAP), Dimension.What.LENGTH);

    private Strap() {}

    /** On the bare foot, sewn from the cloth. */
    static boolean ofCloth(Style style) {
        return style.leg() == Style.Leg.STIRRUP && style.lower().strapWidth().isPresent();
    }

    /** From hem to hem, as worn on the bare foot, mm: down both sides of the foot and across the arch. */
    static double wayOnFoot(Order order) {
        double hem = HemHeights.of(order).value();
        return 2 * hem - lowerAtSide(order) + ARCH_SHARE * order.body().mm(Measure.FOOT_LENGTH);
    }

    /** From hem to hem under the boot: down both sides to the sole's lower edge and across the arch, mm. */
    static double wayUnderBoot(Order order, Boot boot) {
        double down = boot.sole().ankleToSole().orElseThrow() - boot.ankleToHem() - order.lowered(false);
        return 2 * down - lowerAtSide(order) + boot.sole().arch().orElseThrow();
    }

    /** How much lower the edge was moved at the side line, where one end of the strap is, than at the inseam, mm. */
    private static double lowerAtSide(Order order) {
        return order.lowered(true) - order.lowered(false);
    }

    /** A folded strip of the cloth, on the bare foot. */
    static Optional<Reasoned<Piece>> ofCloth(Order order) {
        if (!ofCloth(order.style())) {
            return Optional.empty();
        }
        double width = order.style().lower().strapWidth().orElseThrow();
        Piece strap = Bands.strap(wayOnFoot(order) * (1 - TAUT), width, LAP, order.style());
        Input hem = new Input(
                Tell.said("input.strap-hem-height"),
                HemHeights.of(order).value(),
                "mm",
                Inputs.origin(order.body(), Measure.ANKLE_HEIGHT));
        Ruled length = Ruled.of(
                strap.edge(EdgeName.LOWER_EDGE).length(),
                Tell.said("rule.strap-foot", Part.number(ARCH_SHARE, 2), Part.number(1 - TAUT, 2)),
                Tell.said("source.straps-practice"),
                hem,
                Inputs.measure(order.body(), Measure.FOOT_LENGTH));
        return Optional.of(new Reasoned<>(
                strap, List.of(order.moves().told(length, Shift.SIDE_HEM).reason(LENGTH))));
    }

    /** A firm elastic under the boot. */
    static Optional<Reasoned<Notion>> elastic(Order order, Piece end) {
        if (order.boot().isEmpty() || order.style().lower().strapWidth().isEmpty()) {
            return Optional.empty();
        }
        Boot boot = order.boot().get();
        double way = wayUnderBoot(order, boot);
        double width = order.style().lower().strapWidth().getAsDouble();
        double cut = Grid.snap(way * (1 - TAUT) + 2 * LAP_OF_FASTENING + 2 * FASTENING);
        EdgeName edge = end.name().is(PieceKind.CUFF) ? EdgeName.LOWER_EDGE : EdgeName.HEM;
        Notion strap = new Notion(
                NotionName.STRAP, 2, width, cut, Grid.snap(way), FASTENING, LAP_OF_FASTENING, end.name(), edge);
        return Optional.of(new Reasoned<>(strap, List.of(length(order, boot, cut))));
    }

    private static Reason length(Order order, Boot boot, double cut) {
        Ruled length = Ruled.of(
                cut,
                Tell.said(
                        "rule.strap-boot",
                        Part.number(1 - TAUT, 2),
                        Part.length(LAP_OF_FASTENING),
                        Part.length(FASTENING)),
                Tell.said("source.straps-practice"),
                Inputs.measured(
                        Tell.said("input.ankle-to-sole"),
                        boot.sole().ankleToSole().orElseThrow()),
                Inputs.measured(Tell.said("input.ankle-to-hem"), boot.ankleToHem()),
                Inputs.measured(
                        Tell.said("input.arch-width"), boot.sole().arch().orElseThrow()));
        return order.moves().told(length, Shift.HEM, Shift.SIDE_HEM).reason(LENGTH);
    }
}
