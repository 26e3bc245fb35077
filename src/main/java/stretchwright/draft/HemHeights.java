package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Pattern;
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
    static double widthOnBody(Body body, Fabric fabric, Pattern.Reductions r, double height, Style.Leg leg) {
        if (height <= body.mm(Measure.ANKLE_HEIGHT) || leg == Style.Leg.ANKLE || leg == Style.Leg.STIRRUP) {
            return ankle(body, fabric, r);
        }
        double width = GirthProfile.of(body).girthAt(height) * (1 - r.across());
        return leg == Style.Leg.OVER_BOOT
                ? Math.max(width, Reducing.narrowestFor(body.mm(Measure.HEEL_GIRTH), fabric))
                : width;
    }

    /** Length of the edge of a hem over the boot: the boot's girth there, and for the heel to pass. */
    static double widthOverBoot(Boot boot, Fabric fabric, Pattern.Reductions r, LowerEnd.Hem hem) {
        if (hem == LowerEnd.Hem.TO_COLLAR || hem == LowerEnd.Hem.WHOLE_BOOT) {
            double girth = boot.girthBelowTop(LowerEnd.LUNGE);
            return passing(boot, girth, girth * (1 - r.hem()), fabric);
        }
        double least = Math.max(boot.hemGirth() * (1 - r.hem()), Reducing.narrowestFor(boot.heelGirth(), fabric));
        return passing(boot, boot.hemGirth(), least, fabric);
    }

    /** At the boot's top edge. Rolled up for lacing, the whole lower leg lies round the calf. */
    static double widthAtTop(Boot boot, Body body, Fabric fabric, Pattern.Reductions r) {
        double calf = boot.overLaced() ? 0 : body.mm(Measure.CALF_GIRTH);
        double foot = Math.max(calf, Math.max(body.mm(Measure.HEEL_GIRTH), boot.topGirth()));
        double least = Math.max(boot.topGirth() * (1 - r.hem()), Reducing.narrowestFor(foot, fabric));
        return passing(boot, boot.topGirth(), least, fabric);
    }

    /** Pulled over the laced boot it is cut wider for guard and heel to pass, but never so wide that it hangs loose. */
    private static double passing(Boot boot, double girth, double least, Fabric fabric) {
        if (!boot.overLaced()) {
            return least;
        }
        return Math.max(least, Math.min(girth, Reducing.narrowestFor(boot.widestOverLaced(), fabric)));
    }

    static double ankle(Body body, Fabric fabric, Pattern.Reductions r) {
        return Math.max(
                LegLine.flat(body, Measure.ANKLE_GIRTH, r), Reducing.narrowestFor(body.mm(Measure.HEEL_GIRTH), fabric));
    }
}
