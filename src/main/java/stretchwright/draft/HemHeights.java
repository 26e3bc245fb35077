package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Style;

/** Where the lower end of the leg lies on the wearer, mm above the bare foot's floor, and how wide it is cut there. */
final class HemHeights {
    /** A hem inside the boot ends at least this far below the boot's top edge, mm, or it works its way out (same). */
    static final double INSIDE = 20;

    /** The edge of a hem at the sole stays 5 to 10 mm above it, mm: blade and ground cut it (same). */
    static final double ABOVE_SOLE = 8;

    /** A hem on the fullest part of the calf climbs off it: it ends this far below, mm (common practice, no source). */
    static final double BELOW_CALF = 40;

    /** A hem on the kneecap rubs: it ends this far above its middle, mm (common practice, no source). */
    static final double ABOVE_KNEE = 60;

    private HemHeights() {}

    /** Height of the boot's top edge. */
    static double bootTop(Body body, Boot boot) {
        return body.mm(Measure.ANKLE_BONE_HEIGHT) + boot.ankleToTop();
    }

    /** The leg's own lower edge at the inseam; for a whole boot that of the leg above its cover. Below 0: lifted. */
    static double overBoot(Body body, Boot boot, LowerEnd.Hem hem) {
        return switch (hem) {
            case INSIDE_BOOT -> Math.min(body.mm(Measure.ANKLE_HEIGHT), bootTop(body, boot) - INSIDE);
            case TO_COLLAR, WHOLE_BOOT -> bootTop(body, boot) - LowerEnd.LUNGE;
            case OVER_LACES, OVER_HEEL -> body.mm(Measure.ANKLE_BONE_HEIGHT) - boot.ankleToHem();
        };
    }

    /** Without a boot. */
    static double onBody(Body body, Style.Leg leg) {
        return switch (leg) {
            case OVER_BOOT, ANKLE, STIRRUP -> body.mm(Measure.ANKLE_HEIGHT);
            case CALF -> body.mm(Measure.CALF_HEIGHT) - BELOW_CALF;
            case KNEE -> body.mm(Measure.KNEE_HEIGHT) + ABOVE_KNEE;
            case SHORT -> (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
        };
    }

    /** Flat width of an end on the leg itself: as the body is there, and for the heel to pass where it must. */
    static double widthOnBody(Order order, double height) {
        Body body = order.body();
        Style.Leg leg = order.style().leg();
        if (height <= body.mm(Measure.ANKLE_HEIGHT) || leg == Style.Leg.ANKLE || leg == Style.Leg.STIRRUP) {
            return ankle(order);
        }
        double width =
                GirthProfile.of(body).girthAt(height) * (1 - order.holding().reductionAt(height));
        return leg == Style.Leg.OVER_BOOT ? Math.max(width, heelPasses(order)) : width;
    }

    /** Length of the edge of a hem over the boot: the boot's girth there, and for the heel to pass. */
    static double widthOverBoot(Boot boot, Order order, LowerEnd.Hem hem) {
        double held = 1 - order.reductions().hem();
        if (hem == LowerEnd.Hem.TO_COLLAR || hem == LowerEnd.Hem.WHOLE_BOOT) {
            double girth = boot.girthBelowTop(LowerEnd.LUNGE);
            return passing(boot, girth, girth * held, order.hemStretch());
        }
        double least = Math.max(boot.hemGirth() * held, Reducing.narrowestFor(boot.heelGirth(), order.hemStretch()));
        return passing(boot, boot.hemGirth(), least, order.hemStretch());
    }

    /** At the boot's top edge. Rolled up for lacing, the whole lower leg lies round the calf. */
    static double widthAtTop(Boot boot, Order order) {
        Body body = order.body();
        double cloth = order.fabric().stretchAcross();
        double calf = boot.overLaced() ? 0 : body.mm(Measure.CALF_GIRTH);
        double foot = Math.max(calf, Math.max(body.mm(Measure.HEEL_GIRTH), boot.topGirth()));
        double held = boot.topGirth() * (1 - order.reductions().hem());
        return passing(boot, boot.topGirth(), Math.max(held, Reducing.narrowestFor(foot, cloth)), cloth);
    }

    /** Pulled over the laced boot it is cut wider for guard and heel to pass, but never so wide that it hangs loose. */
    private static double passing(Boot boot, double girth, double least, double stretch) {
        if (!boot.overLaced()) {
            return least;
        }
        return Math.max(least, Math.min(girth, Reducing.narrowestFor(boot.widestOverLaced(), stretch)));
    }

    static double ankle(Order order) {
        return Math.max(order.holding().at(Level.Name.ANKLE).width(), heelPasses(order));
    }

    private static double heelPasses(Order order) {
        return Reducing.narrowestFor(order.body().mm(Measure.HEEL_GIRTH), order.hemStretch());
    }
}
