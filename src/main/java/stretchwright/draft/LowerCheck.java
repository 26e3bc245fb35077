package stretchwright.draft;

import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;

/** Whether the hem, the strap and the boot they were measured for leave each other room; names both where not. */
final class LowerCheck {
    /** A hem nearer to the sole's lower edge than this, mm, is cut by blade and ground (docs/maths/draft.md, hems). */
    static final double LEAST_ABOVE_SOLE = 5;

    /** Part of the smallest radius of a curved edge that can be turned up without folds [C]. */
    static final double TURN_OF_RADIUS = 1.0 / 4;

    /** A cover lower than this, mm, has no room for its seams and its turned hem [C]. */
    static final double LOWEST_COVER = 60;

    private LowerCheck() {}

    static boolean pass(Boot boot, Order order, Findings findings) {
        return switch (order.style().lower().hem()) {
            case INSIDE_BOOT -> inside(boot, order, findings);
            case TO_COLLAR -> true;
            case OVER_LACES, OVER_HEEL ->
                aboveSole(boot, order, findings)
                        && slopes(boot, order, findings)
                        && strap(boot, order.style(), findings);
            case WHOLE_BOOT -> cover(boot, order, findings);
        };
    }

    private static boolean inside(Boot boot, Order order, Findings findings) {
        double bone = order.body().mm(Measure.ANKLE_BONE_HEIGHT);
        double hem = HemHeights.of(order).value();
        if (hem >= bone) {
            return true;
        }
        findings.add(
                "style.hem",
                Tell.said("hem.inside", Part.length(HemHeights.INSIDE), Part.length(boot.ankleToTop())),
                Tell.said("hem.inside-help"));
        return false;
    }

    private static boolean aboveSole(Boot boot, Order order, Findings findings) {
        if (boot.sole().ankleToSole().isEmpty()) {
            return true;
        }
        double sole = boot.sole().ankleToSole().getAsDouble();
        double unmoved = boot.ankleToHem() + order.style().lower().hemDrop() / 2;
        double lowest = unmoved + Math.max(order.lowered(false), order.lowered(true));
        if (lowest <= sole - LEAST_ABOVE_SOLE) {
            return true;
        }
        boolean moved = unmoved <= sole - LEAST_ABOVE_SOLE;
        Shift most = order.shift(Shift.HEM) >= order.shift(Shift.SIDE_HEM) ? Shift.HEM : Shift.SIDE_HEM;
        findings.add(
                moved ? MovesCheck.key(order, most) : "boot.ankle to hem",
                Tell.said("hem.sole", Part.length(lowest), Part.length(sole), Part.length(LEAST_ABOVE_SOLE)),
                moved ? Tell.said("moves.less-help") : Tell.said("hem.sole-help"));
        return false;
    }

    private static boolean slopes(Boot boot, Order order, Findings findings) {
        double drop = order.style().lower().hemDrop();
        if (drop == 0) {
            return true;
        }
        HemLine line = HemLine.of(order);
        double covered = boot.ankleToTop() + boot.ankleToHem();
        if (covered - drop / 2 < LegLine.SHORTEST_FLARE) {
            findings.add(
                    "style.hem drop",
                    Tell.said(
                            "hem.drop-lifts",
                            Part.length(drop),
                            Part.length(covered - drop / 2),
                            Part.length(LegLine.SHORTEST_FLARE)),
                    Tell.said("hem.drop-lifts-help"));
            return false;
        }
        double width = line.across(HemWidths.edge(order).value());
        double most = TURN_OF_RADIUS * line.sharpest(width);
        double turn = order.style().hemAllowance();
        if (turn > most) {
            findings.add(
                    "style.seam allowance.hem",
                    Tell.said(
                            "hem.turn",
                            Part.length(turn),
                            Part.length(drop),
                            Part.length(most).atMost()),
                    Tell.said("hem.turn-help"));
            return false;
        }
        return true;
    }

    private static boolean strap(Boot boot, Style style, Findings findings) {
        if (style.lower().strapWidth().isEmpty() || boot.sole().gap().isEmpty()) {
            return true;
        }
        double width = style.lower().strapWidth().getAsDouble();
        double gap = boot.sole().gap().getAsDouble();
        if (gap >= width + 2 * Strap.GAP_ROOM) {
            return true;
        }
        findings.add(
                "style.strap",
                Tell.said("strap.gap", Part.length(width), Part.length(width + 2 * Strap.GAP_ROOM), Part.length(gap)),
                Tell.said("strap.gap-help"));
        return false;
    }

    private static boolean cover(Boot boot, Order order, Findings findings) {
        double height = Cover.height(order);
        if (height < LOWEST_COVER) {
            findings.add(
                    "style.hem",
                    Tell.said(
                            "cover.low",
                            Part.length(LOWEST_COVER),
                            Part.length(boot.ankleToTop()),
                            Part.length(boot.sole().ankleToSole().orElseThrow()),
                            Part.length(height)),
                    Tell.said("cover.low-help"));
            return false;
        }
        double around = boot.sole().around();
        if (around < boot.topGirth()) {
            findings.add(
                    "boot.sole length",
                    Tell.said("cover.sole", Part.length(around), Part.length(boot.topGirth())),
                    Tell.said("cover.sole-help"));
            return false;
        }
        return true;
    }
}
