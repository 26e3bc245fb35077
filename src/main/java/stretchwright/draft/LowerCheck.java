package stretchwright.draft;

import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Findings;
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
                aboveSole(boot, order.style(), findings)
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
        Odds.at(
                findings,
                "style.hem",
                "Choose hem: to the collar or over the laces, or measure boot.ankle to top again.",
                "\"inside the boot\" needs the boot's top %.0f mm above the ankle bone, and it stands %.0f mm above it.",
                HemHeights.INSIDE,
                boot.ankleToTop());
        return false;
    }

    private static boolean aboveSole(Boot boot, Style style, Findings findings) {
        if (boot.sole().ankleToSole().isEmpty()) {
            return true;
        }
        double sole = boot.sole().ankleToSole().getAsDouble();
        double lowest = boot.ankleToHem() + style.lower().hemDrop() / 2;
        if (lowest <= sole - LEAST_ABOVE_SOLE) {
            return true;
        }
        Odds.at(
                findings,
                "boot.ankle to hem",
                "Set the hem higher, or measure both again.",
                "the hem would reach %.0f mm below the ankle bone, and the sole's lower edge lies %.0f mm below it:"
                        + " a hem must stay %.0f mm above the sole.",
                lowest,
                sole,
                LEAST_ABOVE_SOLE);
        return false;
    }

    private static boolean slopes(Boot boot, Order order, Findings findings) {
        double drop = order.style().lower().hemDrop();
        if (drop == 0) {
            return true;
        }
        double covered = boot.ankleToTop() + boot.ankleToHem();
        if (covered - drop / 2 < LegLine.SHORTEST_FLARE) {
            Odds.at(
                    findings,
                    "style.hem drop",
                    "Choose a smaller hem drop, or let the leg reach further down (boot.ankle to hem).",
                    "the hem drop of %.0f mm lifts the front to %.0f mm below the boot's top; %.0f mm are needed.",
                    drop,
                    covered - drop / 2,
                    LegLine.SHORTEST_FLARE);
            return false;
        }
        double width = HemLine.across(HemWidths.edge(order).value(), drop);
        double most = TURN_OF_RADIUS * HemLine.sharpest(width, drop);
        double turn = order.style().hemAllowance();
        if (turn > most) {
            Odds.at(
                    findings,
                    "style.seam allowance.hem",
                    "Turn a narrower hem, or choose a smaller hem drop.",
                    "a hem turned %.0f mm deep does not lie flat on an edge that drops %.0f mm: at most %.0f mm does.",
                    turn,
                    drop,
                    most);
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
        Odds.at(
                findings,
                "style.strap",
                "Leave the strap out: under the heel block or across the blade it trips the wearer and is cut.",
                "a strap of %.0f mm needs a gap of %.0f mm between the mounts, and boot.gap between mounts is %.0f mm:"
                        + " it would lie under the blade, the plate or the heel block.",
                width,
                width + 2 * Strap.GAP_ROOM,
                gap);
        return false;
    }

    private static boolean cover(Boot boot, Order order, Findings findings) {
        double height = Cover.height(order);
        if (height < LOWEST_COVER) {
            Odds.at(
                    findings,
                    "style.hem",
                    "Choose hem: over the laces, or measure boot.ankle to sole and boot.ankle to top again.",
                    "\"whole boot\" needs a cover %.0f mm high, and between the boot's top, %.0f mm above the ankle bone,"
                            + " and the sole, %.0f mm below it, there is room for %.0f mm.",
                    LOWEST_COVER,
                    boot.ankleToTop(),
                    boot.sole().ankleToSole().orElseThrow(),
                    height);
            return false;
        }
        double around = boot.sole().around();
        if (around < boot.topGirth()) {
            Odds.at(
                    findings,
                    "boot.sole length",
                    "Measure the sole's length and width and the top girth again.",
                    "the way round the sole is %.0f mm, less than the boot's top girth of %.0f mm.",
                    around,
                    boot.topGirth());
            return false;
        }
        return true;
    }
}
